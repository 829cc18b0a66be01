import { readFileSync } from 'node:fs';
import openapiTS, { astToString, COMMENT_HEADER } from 'openapi-typescript';
import { expect, it } from 'vitest';

const description = new URL('../../../../docs/openapi.json', import.meta.url);
const written = new URL('./openapi.d.ts', import.meta.url);

it('the types of the answers are those of the service as it is (npm run contract)', {
  timeout: 30_000,
}, async () => {
  const types = astToString(await openapiTS(description, { immutable: true }));

  expect(readFileSync(written, 'utf8')).toBe(`${COMMENT_HEADER}${types}`);
});
