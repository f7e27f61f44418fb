/*
 * What hangs together, when pairs are joined one by one: a forest in which each node knows one above it.
 *
 *      0     3       `parent` is [0, 0, 1, 3, 3]: nodes 0, 1 and 2 hang together, and 3 and 4. Two groups become one by
 *     /     /        writing the root of one as the parent of the other's.
 *    1     4
 *   /
 *  2
 */

/** The node at the top of a node's group; the way there is made short for whoever asks next. */
export function rootOf(parent: { [node: number]: number }, node: number): number {
  let top = node;
  while (parent[top] !== top) top = parent[top] as number;
  parent[node] = top;
  return top;
}
