import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const sources = join(import.meta.dirname, '..', '..');

// What makes a page look like any web map: OpenLayers' own controls, style sheet, class names and edit colours
// (ol/style/Style.js, createEditingStyle and createDefaultStyle: white, [0, 153, 255, 1] and #3399CC).
const libraryLook: readonly RegExp[] = [
  /from 'ol\/control/,
  /ol\/ol\.css/,
  /\bol-(zoom|attribution|rotate|scale|control|unselectable|overviewmap|full-screen)/,
  /createEditingStyle|createDefaultStyle/,
  /#39c\b|#3399cc|0, ?153, ?255/i,
];

describe('the look', () => {
  const files = readdirSync(sources, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(tsx?|css)$/.test(name) && !name.endsWith('.test.ts'))
    .map((name) => ({ name, text: readFileSync(join(sources, name), 'utf8') }));

  it('is looked for where the sheet is drawn', () => {
    expect(files.some(({ text }) => text.includes("from 'ol/Map.js'"))).toBe(true);
  });

  it.each(libraryLook)('is nowhere that of the drawing library: %s', (look) => {
    expect(files.filter(({ text }) => look.test(text)).map(({ name }) => name)).toEqual([]);
  });

  it('asks for no default controls', () => {
    const maps = files.flatMap(({ text }) => text.match(/new OpenLayersMap\(\{[^}]*/g) ?? []);

    expect(maps.length).toBeGreaterThan(0);
    expect(maps.every((made) => made.includes('controls: []') && made.includes('interactions: ['))).toBe(
      true,
    );
  });

  it('gives every layer of marks styles of its own', () => {
    const bare = files.filter(({ text }) => /new Feature\(/.test(text) && !/setStyle\(/.test(text));

    expect(bare.map(({ name }) => name)).toEqual([]);
  });
});
