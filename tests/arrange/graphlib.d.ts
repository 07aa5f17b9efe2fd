declare module "graphlib" {
  export class Graph {
    setNode(name: string): this;
    setEdge(from: string, to: string): this;
    hasNode(name: string): boolean;
    nodes(): string[];
    edges(): { v: string; w: string }[];
    predecessors(name: string): string[] | undefined;
    successors(name: string): string[] | undefined;
  }
  export const alg: {
    isAcyclic(graph: Graph): boolean;
    topsort(graph: Graph): string[];
    preorder(graph: Graph, from: string | string[]): string[];
    postorder(graph: Graph, from: string | string[]): string[];
    findCycles(graph: Graph): string[][];
  };
}
