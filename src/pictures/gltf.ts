/**
 * Relaxed pieces as glTF 2.0 in its binary form (.glb; Khronos, ISO/IEC 12113:2022): a mesh for each
 * piece, in metres, y up. Every corner bears the number of its stitch (EXT_mesh_features), and the
 * mesh's extras tell which row and which words of the manuscript a number belongs to. The start of round
 * is a second primitive of lines.
 */
import type { Fabric } from '../fabric/index.ts';
import { patchesOf, type Shape, type ShapedPiece } from '../figures/index.ts';
import { sqrt } from '../units/index.ts';
import { startEdges } from './start-line.ts';

export interface GltfOptions {
  /** Name of the program with its version, for the file's head. */
  readonly generator: string;
}

/** Bytes of a .glb file; the same shape gives the same bytes. */
export function toGlb(shape: Shape, fabric: Fabric, { generator }: GltfOptions): Uint8Array {
  const parts = shape.pieces.map((piece) => geometryOf(piece));
  const places = placesOf(shape.pieces);
  const buffer = new Packed();
  const meshes = parts.map((part, i) => meshOf(buffer, part, shape, { fabric, index: i }));
  const document = {
    asset: { version: '2.0', generator },
    extensionsUsed: ['EXT_mesh_features'],
    scene: 0,
    scenes: [{ nodes: meshes.map((_, i) => i) }],
    nodes: shape.pieces.map(({ name }, i) => ({ name, mesh: i, translation: [places[i]!, 0, 0] })),
    meshes,
    materials: [
      {
        name: 'yarn',
        doubleSided: true,
        pbrMetallicRoughness: {
          baseColorFactor: [0.85, 0.83, 0.78, 1],
          metallicFactor: 0,
          roughnessFactor: 1,
        },
      },
      ...(parts.some(({ start }) => start.length > 0) ? [INK] : []),
    ],
    accessors: buffer.accessors,
    bufferViews: buffer.views,
    buffers: [{ byteLength: buffer.length }],
  };
  return glb(JSON.stringify(shape.pieces.length > 0 ? document : emptyOf(document)), buffer);
}

const INK = {
  name: 'start of round',
  pbrMetallicRoughness: {
    baseColorFactor: [0.05, 0.05, 0.05, 1],
    metallicFactor: 0,
    roughnessFactor: 1,
  },
};

/** A file without any piece still is a valid one. */
const emptyOf = ({ asset }: { readonly asset: object }): object => ({ asset });

interface Geometry {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly features: Float32Array;
  readonly indices: Uint32Array;
  /** Start of round: two places a round, from bottom to top. */
  readonly start: Float32Array;
}

const MM = 0.001;

function geometryOf(piece: ShapedPiece): Geometry {
  const { corners, isBare } = patchesOf(piece.graph, piece.at);
  const nodes = Array.from({ length: piece.graph.n }, (_, i) => i).filter((i) => !isBare[i]);
  const positions = new Float32Array(12 * nodes.length);
  const normals = new Float32Array(12 * nodes.length);
  const features = new Float32Array(4 * nodes.length);
  const indices = new Uint32Array(6 * nodes.length);
  const isStanding = piece.dimensions.pose === 'standing';
  nodes.forEach((node, k) => {
    for (let c = 0; c < 4; c++) {
      const from = 12 * node + 3 * c;
      const [x, y, z] = [corners[from]!, corners[from + 1]!, corners[from + 2]!];
      // Hung and flat pieces are turned about x, so that the right side or the crown looks up.
      positions.set(
        isStanding ? [x * MM, z * MM, -y * MM] : [x * MM, -z * MM, y * MM],
        12 * k + 3 * c,
      );
      features[4 * k + c] = node;
    }
    const normal = normalOf(positions, 12 * k);
    for (let c = 0; c < 4; c++) normals.set(normal, 12 * k + 3 * c);
    indices.set(
      [0, 1, 2, 0, 2, 3].map((c) => 4 * k + c),
      6 * k,
    );
  });
  const placeOf = new Map(nodes.map((node, k) => [node, k]));
  return { positions, normals, features, indices, start: startOf(piece, placeOf, positions) };
}

/** Above the fabric, or the line would flicker in it: metres, the thickness of a thread. */
const RAISED = 0.0005;

/** The edges of the first stitches, on both faces. */
function startOf(
  piece: ShapedPiece,
  placeOf: ReadonlyMap<number, number>,
  positions: Float32Array,
): Float32Array {
  const places: number[] = [];
  const edges = startEdges(piece);
  for (const { from } of piece.graph.rows) {
    const edge = edges.get(from);
    const k = placeOf.get(from);
    if (!edge || k === undefined) continue;
    const normal = normalOf(positions, 12 * k);
    for (const raised of [RAISED, -RAISED]) {
      for (const corner of edge.side === 'first' ? [0, 1] : [3, 2]) {
        const at = 12 * k + 3 * corner;
        for (let c = 0; c < 3; c++) places.push(positions[at + c]! + raised * normal[c]!);
      }
    }
  }
  return Float32Array.from(places);
}

/** Square to both diagonals; up where a patch has no area. */
function normalOf(at: Float32Array, from: number): readonly [number, number, number] {
  const edge = (c: number, a: number, b: number): number =>
    at[from + 3 * b + c]! - at[from + 3 * a + c]!;
  const [ax, ay, az] = [edge(0, 0, 2), edge(1, 0, 2), edge(2, 0, 2)];
  const [bx, by, bz] = [edge(0, 1, 3), edge(1, 1, 3), edge(2, 1, 3)];
  const [x, y, z] = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
  const length = sqrt(x * x + y * y + z * z);
  return length > 1e-12 ? [x / length, y / length, z / length] : [0, 1, 0];
}

/** Pieces stand beside each other, a hand's breadth apart: x of each, metres. */
function placesOf(pieces: readonly ShapedPiece[]): readonly number[] {
  let x = 0;
  return pieces.map(({ dimensions }, i) => {
    const half = (dimensions.widthMm * MM) / 2;
    if (i > 0) x += half;
    const place = x;
    x += half + 0.08;
    return place;
  });
}

function meshOf(
  buffer: Packed,
  geometry: Geometry,
  shape: Shape,
  { fabric, index }: { readonly fabric: Fabric; readonly index: number },
): object {
  const piece = shape.pieces[index]!;
  const attributes = {
    POSITION: buffer.floats(geometry.positions, 'VEC3'),
    NORMAL: buffer.floats(geometry.normals, 'VEC3'),
    _FEATURE_ID_0: buffer.floats(geometry.features, 'SCALAR'),
  };
  const features = { featureIds: [{ featureCount: piece.graph.n, attribute: 0 }] };
  return {
    name: piece.name,
    primitives: [
      {
        attributes,
        indices: buffer.indices(geometry.indices),
        material: 0,
        extensions: { EXT_mesh_features: features },
      },
      ...(geometry.start.length > 0 ? [startPrimitive(buffer, geometry.start)] : []),
    ],
    extras: { copies: piece.copies, rows: rowsOf(piece), stitches: wordsOf(piece, shape, fabric) },
  };
}

const LINES = 1;

const startPrimitive = (buffer: Packed, start: Float32Array): object => ({
  attributes: { POSITION: buffer.floats(start, 'VEC3') },
  mode: LINES,
  material: 1,
});

/** Rows by the numbers of their stitches, [from, to). */
const rowsOf = ({ graph }: ShapedPiece): readonly object[] =>
  graph.rows.map(({ record, from, to }) => ({
    id: record?.id ?? null,
    label: record?.label ?? 'start',
    from,
    to,
  }));

/** For each stitch its kind, and where in the manuscript the words stand that made it. */
function wordsOf({ graph }: ShapedPiece, shape: Shape, fabric: Fabric): object {
  const nodes = fabric.cloths[shape.sizeIndex]!.nodes;
  const origins = Array.from(graph.cloth, (node) => fabric.origins[nodes.origin[node]!]!);
  return {
    kinds: fabric.kinds.kinds.map(({ name }) => name),
    kind: Array.from(graph.cloth, (node) => nodes.kind[node]!),
    from: origins.map(({ from }) => from),
    to: origins.map(({ to }) => to),
  };
}

const FLOAT = 5126;
const UNSIGNED_INT = 5125;
const ARRAY_BUFFER = 34962;
const ELEMENT_ARRAY_BUFFER = 34963;

/** The binary part: columns one after the other. All are of four-byte numbers, so each is aligned. */
class Packed {
  readonly accessors: object[] = [];
  readonly views: object[] = [];
  readonly columns: (Float32Array | Uint32Array)[] = [];
  length = 0;

  floats(column: Float32Array, type: 'VEC3' | 'SCALAR'): number {
    const size = type === 'VEC3' ? 3 : 1;
    return this.add(column, ARRAY_BUFFER, {
      componentType: FLOAT,
      type,
      count: column.length / size,
      ...boundsOf(column, size),
    });
  }

  indices(column: Uint32Array): number {
    return this.add(column, ELEMENT_ARRAY_BUFFER, {
      componentType: UNSIGNED_INT,
      type: 'SCALAR',
      count: column.length,
    });
  }

  private add(column: Float32Array | Uint32Array, target: number, accessor: object): number {
    const byteLength = column.length * 4;
    this.views.push({ buffer: 0, byteOffset: this.length, byteLength, target });
    this.columns.push(column);
    this.length += byteLength;
    return this.accessors.push({ bufferView: this.views.length - 1, ...accessor }) - 1;
  }
}

function boundsOf(column: Float32Array, size: number): { min: number[]; max: number[] } {
  const min = new Array<number>(size).fill(Number.POSITIVE_INFINITY);
  const max = new Array<number>(size).fill(Number.NEGATIVE_INFINITY);
  for (let i = 0; i < column.length; i++) {
    min[i % size] = Math.min(min[i % size]!, column[i]!);
    max[i % size] = Math.max(max[i % size]!, column[i]!);
  }
  return { min, max };
}

/** Head, JSON padded with blanks, binary part; lengths little endian, as the format has them. */
function glb(json: string, buffer: Packed): Uint8Array {
  const text = utf8(json);
  const textLength = Math.ceil(text.length / 4) * 4;
  const hasBinary = buffer.length > 0;
  const length = 12 + 8 + textLength + (hasBinary ? 8 + buffer.length : 0);
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  const words = [0x46546c67, 2, length, textLength, 0x4e4f534a];
  for (const [i, word] of words.entries()) view.setUint32(4 * i, word, true);
  bytes.fill(0x20, 20, 20 + textLength);
  bytes.set(text, 20);
  if (!hasBinary) return bytes;
  let at = 20 + textLength;
  view.setUint32(at, buffer.length, true);
  view.setUint32(at + 4, 0x004e4942, true);
  at += 8;
  for (const column of buffer.columns) {
    for (let i = 0; i < column.length; i++, at += 4) {
      if (column instanceof Float32Array) view.setFloat32(at, column[i]!, true);
      else view.setUint32(at, column[i]!, true);
    }
  }
  return bytes;
}

/** UTF-8 by hand: the engine has no encoder that all its hosts share. Lone halves become U+FFFD. */
function utf8(text: string): Uint8Array {
  const bytes: number[] = [];
  for (const sign of text) {
    const code = sign.codePointAt(0)!;
    const point = code >= 0xd800 && code <= 0xdfff ? 0xfffd : code;
    if (point < 0x80) bytes.push(point);
    else if (point < 0x800) bytes.push(0xc0 | (point >> 6), tail(point, 0));
    else if (point < 0x10000) bytes.push(0xe0 | (point >> 12), tail(point, 6), tail(point, 0));
    else bytes.push(0xf0 | (point >> 18), tail(point, 12), tail(point, 6), tail(point, 0));
  }
  return Uint8Array.from(bytes);
}

const tail = (point: number, shift: number): number => 0x80 | ((point >> shift) & 0x3f);
