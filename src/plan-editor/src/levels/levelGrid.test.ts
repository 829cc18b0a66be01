import { describe, expect, it } from 'vitest';
import { readLevels } from './levelGrid';

// Laid out as docs/openapi.json says of DrawLevels.
function bytesOf(header: object, ...values: readonly number[]): ArrayBuffer {
  const json = new TextEncoder().encode(JSON.stringify(header));
  const padded = Math.ceil(json.length / 4) * 4;
  const bytes = new ArrayBuffer(4 + padded + 4 * values.length);
  const view = new DataView(bytes);
  new Uint8Array(bytes).fill(0x20, 4, 4 + padded).set(json, 4);
  view.setUint32(0, padded, true);
  values.forEach((value, i) => {
    view.setFloat32(4 + padded + 4 * i, value, true);
  });
  return bytes;
}

const header = {
  lowerLeft: [1, -2],
  stepMetres: 0.5,
  columns: 2,
  rows: 1,
  earHeightMetres: 1.55,
  unit: 'dB(A)',
  cannotTell: false,
  layers: ['best', 'planning'],
};

describe('readLevels', () => {
  it('takes the planning layer, not the best estimate', () => {
    const grid = readLevels(bytesOf(header, 70, 71, 80, 81.5));

    expect(grid).toMatchObject({
      lowerLeft: [1, -2],
      stepMetres: 0.5,
      columns: 2,
      rows: 1,
      earHeightMetres: 1.55,
    });
    expect([...(grid?.planningDbA ?? [])]).toEqual([80, 81.5]);
  });

  it('knows when the level can not be told', () => {
    expect(readLevels(bytesOf({ ...header, cannotTell: true, layers: [] }))).toBeNull();
  });

  it.each([
    ['nothing', new ArrayBuffer(0)],
    ['half a layer', bytesOf(header, 70, 71, 80)],
    ['no planning layer', bytesOf({ ...header, layers: ['best'] }, 70, 71, 80, 81)],
    ['a header longer than the bytes', new Uint8Array([255, 0, 0, 0, 32]).buffer],
  ])('throws at %s rather than show a wrong level', (_, bytes) => {
    expect(() => readLevels(bytes)).toThrow(RangeError);
  });
});
