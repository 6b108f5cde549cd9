/** Packages of the tests that bring no types: as much of each as is used here. */
declare module 'gltf-validator' {
  interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly { readonly code: string; readonly message: string }[];
    };
    readonly info: { readonly totalVertexCount: number; readonly totalTriangleCount: number };
  }
  export function validateBytes(bytes: Uint8Array): Promise<Report>;
}

declare module 'd3-force-3d' {
  interface Simulation {
    stop(): Simulation;
    tick(iterations?: number): Simulation;
    force(name: string, force: unknown): Simulation;
    alpha(alpha: number): Simulation;
    alphaDecay(decay: number): Simulation;
    velocityDecay(decay: number): Simulation;
  }
  interface LinkForce {
    distance(of: (link: { readonly restMm: number }) => number): LinkForce;
    strength(strength: number): LinkForce;
    iterations(n: number): LinkForce;
  }
  export function forceSimulation(nodes: readonly object[], dimensions: number): Simulation;
  export function forceLink(links: readonly object[]): LinkForce;
  export function forceManyBody(): { strength(strength: number): unknown };
}
