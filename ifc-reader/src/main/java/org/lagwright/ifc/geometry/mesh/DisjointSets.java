package org.lagwright.ifc.geometry.mesh;

/** Union-find over numbers from 0. */
final class DisjointSets {

  private final int[] parent;

  DisjointSets(int size) {
    parent = new int[size];
    for (int i = 0; i < size; i++) {
      parent[i] = i;
    }
  }

  int find(int i) {
    int at = i;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  void join(int a, int b) {
    parent[find(a)] = find(b);
  }
}
