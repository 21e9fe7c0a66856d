package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.schema.IfcRecord;

/** A union is the bodies it joins, as other programs write them side by side. */
final class Unions {

  /** Bodies of a union that are looked at one by one; fittings have few. */
  private static final int MAX_OPERANDS = 100;

  private final int maxDepth;
  private final List<Item> operands = new ArrayList<>();

  private Unions(int maxDepth) {
    this.maxDepth = maxDepth;
  }

  /**
   * The items of a body, unions among them taken apart.
   *
   * @param depth how deep the body itself lies
   * @param maxDepth how deep unions are followed
   */
  static List<Item> operands(List<Item> body, int depth, int maxDepth) {
    Unions unions = new Unions(maxDepth);
    for (Item item : body) {
      unions.add(item, depth);
    }
    return unions.operands;
  }

  private void add(Item item, int depth) {
    boolean split = depth < maxDepth && operands.size() < MAX_OPERANDS;
    IfcRecord union = split && isUnion(item.record()) ? unwrapped(item.record()) : null;
    IfcRecord first = union == null ? null : union.ref("FirstOperand");
    IfcRecord second = union == null ? null : union.ref("SecondOperand");
    if (first == null || second == null) {
      operands.add(item);
    } else {
      add(new Item(first, item.frame()), depth + 1);
      add(new Item(second, item.frame()), depth + 1);
    }
  }

  private static IfcRecord unwrapped(IfcRecord record) {
    IfcRecord root = record.is("IfcCsgSolid") ? record.ref("TreeRootExpression") : null;
    return root == null ? record : root;
  }

  /** True for a union, also one that is the root of a tree. */
  static boolean isUnion(IfcRecord item) {
    IfcRecord root = unwrapped(item);
    return root.is("IfcBooleanResult") && "UNION".equals(root.enumeration("Operator"));
  }
}
