package org.lagwright.ifc.geometry;

/** Writes boundary representations of curved faces, lengths through a setting; #100 is the body. */
final class AdvancedText {

  private final RandomSetting setting;
  private final StringBuilder records = new StringBuilder();
  private final StringBuilder faces = new StringBuilder();
  private int next = 200;

  AdvancedText(RandomSetting setting) {
    this.setting = setting;
  }

  int add(String record) {
    records.append("#").append(next).append('=').append(record).append(";\n");
    return next++;
  }

  String n(double metres) {
    return setting.n(metres);
  }

  int point(double... at) {
    return add("IFCCARTESIANPOINT(" + setting.at(at) + ")");
  }

  int direction(double x, double y, double z) {
    return add(
        "IFCDIRECTION((%s,%s,%s))"
            .formatted(RandomSetting.number(x), RandomSetting.number(y), RandomSetting.number(z)));
  }

  /** A placement with its z and x axes. */
  int placement(double[] at, double[] z, double[] x) {
    return add(
        "IFCAXIS2PLACEMENT3D(#%d,#%d,#%d)"
            .formatted(point(at), direction(z[0], z[1], z[2]), direction(x[0], x[1], x[2])));
  }

  int vertex(double... at) {
    return add("IFCVERTEXPOINT(#" + point(at) + ")");
  }

  int circle(int placement, double radiusM) {
    return add("IFCCIRCLE(#%d,%s)".formatted(placement, n(radiusM)));
  }

  int edge(int from, int to, int curve) {
    return add("IFCEDGECURVE(#%d,#%d,#%d,.T.)".formatted(from, to, curve));
  }

  int line(int from, int to, double[] start, double[] along) {
    int vector = add("IFCVECTOR(#%d,%s)".formatted(direction(along[0], along[1], along[2]), n(1)));
    return edge(from, to, add("IFCLINE(#%d,#%d)".formatted(point(start), vector)));
  }

  /** A bound of edges; a negative number is an edge against its direction. */
  int bound(boolean outer, boolean orientation, int... edges) {
    StringBuilder list = new StringBuilder();
    for (int edge : edges) {
      int oriented =
          add("IFCORIENTEDEDGE(*,*,#%d,.%s.)".formatted(Math.abs(edge), edge > 0 ? "T" : "F"));
      list.append(list.isEmpty() ? "#" : ",#").append(oriented);
    }
    int loop = add("IFCEDGELOOP((" + list + "))");
    return add(
        "%s(#%d,.%s.)"
            .formatted(
                outer ? "IFCFACEOUTERBOUND" : "IFCFACEBOUND", loop, orientation ? "T" : "F"));
  }

  void face(int surface, boolean sameSense, int... bounds) {
    StringBuilder list = new StringBuilder();
    for (int bound : bounds) {
      list.append(list.isEmpty() ? "#" : ",#").append(bound);
    }
    int face =
        add("IFCADVANCEDFACE((%s),#%d,.%s.)".formatted(list, surface, sameSense ? "T" : "F"));
    faces.append(faces.isEmpty() ? "#" : ",#").append(face);
  }

  int plane(int placement) {
    return add("IFCPLANE(#" + placement + ")");
  }

  String text() {
    return records + "#100=IFCADVANCEDBREP(#101);\n#101=IFCCLOSEDSHELL((" + faces + "));\n";
  }
}
