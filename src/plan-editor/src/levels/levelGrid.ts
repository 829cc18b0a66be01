import type { PlanPoint } from '../plan/planFile';

/** A grid of places asked for. */
export interface LevelWindow {
  /** Place of the first value. */
  readonly lowerLeft: PlanPoint;
  readonly stepMetres: number;
  readonly columns: number;
  readonly rows: number;
}

/** Levels at the places of a window, row by row from the lowest y. */
export interface LevelGrid extends LevelWindow {
  readonly earHeightMetres: number;
  /** Cautious levels in dB(A). */
  readonly planningDbA: Float32Array;
}

interface Header extends LevelWindow {
  readonly earHeightMetres: number;
  readonly cannotTell: boolean;
  readonly layers: readonly string[];
}

/**
 * Reads the answer of POST /api/levels: the header's length (uint32), the header as JSON, then one layer of float32 after
 * the other, all little-endian. Null when the level can't be told; throws when the bytes are not what they say.
 */
export function readLevels(bytes: ArrayBuffer): LevelGrid | null {
  const view = new DataView(bytes);
  const headerBytes = bytes.byteLength < 4 ? Number.NaN : view.getUint32(0, true);
  if (!(4 + headerBytes <= bytes.byteLength)) {
    throw new RangeError(`A level picture of ${bytes.byteLength} bytes is shorter than its header says.`);
  }
  const header = JSON.parse(new TextDecoder().decode(new Uint8Array(bytes, 4, headerBytes))) as Header;
  if (header.cannotTell) {
    return null;
  }
  const layer = header.layers.indexOf('planning');
  const values = header.columns * header.rows;
  const from = 4 + headerBytes + layer * values * 4;
  if (layer < 0 || from + values * 4 > bytes.byteLength) {
    throw new RangeError(
      `A level picture has no layer “planning” of ${header.rows} × ${header.columns} values.`,
    );
  }
  const { lowerLeft, stepMetres, columns, rows, earHeightMetres } = header;
  return { lowerLeft, stepMetres, columns, rows, earHeightMetres, planningDbA: floats(view, from, values) };
}

// Byte by byte: the order of bytes in the file is fixed, that of the machine is not.
function floats(view: DataView, from: number, count: number): Float32Array {
  return Float32Array.from({ length: count }, (_, i) => view.getFloat32(from + 4 * i, true));
}
