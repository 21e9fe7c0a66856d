package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Spans;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.geometry.surface.Facet.Role;

/**
 * A body that others can be cut with: convex ones and what is made of them. Pieces are closed
 * bodies of facets that do not overlap.
 */
public sealed interface Tool {

  /** What of the pieces lies outside the tool. */
  List<List<Facet>> outside(List<List<Facet>> pieces, Role cut);

  /** What of the pieces lies inside the tool. */
  List<List<Facet>> inside(List<List<Facet>> pieces, Role cut);

  /** The stretches of a line that lie inside the tool, as shares of it; they may overlap. */
  List<double[]> spans(Vec from, Vec to);

  /**
   * Facets cut into parts of which each lies wholly inside or outside; the inner ones are seams.
   */
  List<Facet> split(List<Facet> facets);

  /** How many planes it cuts with. */
  int planes();

  /** A convex body; without any half space it is everything. */
  record Convex(List<HalfSpace> sides) implements Tool {
    @Override
    public int planes() {
      return sides.size();
    }

    @Override
    public List<List<Facet>> outside(List<List<Facet>> pieces, Role cut) {
      List<List<Facet>> kept = new ArrayList<>();
      for (List<Facet> piece : pieces) {
        List<Facet> rest = piece;
        for (int i = 0; i < sides.size(); i++) {
          HalfSpace side = sides.get(i);
          HalfSpace.Closed out = side.opposite().close(rest, cut);
          if (!out.kept().isEmpty()) {
            kept.add(seamed(out, sides.subList(i + 1, sides.size())));
          }
          rest = side.closed(rest, Role.SEAM);
        }
      }
      return kept;
    }

    /** What closes a part is a side of the tool only within the sides that are to come. */
    private static List<Facet> seamed(HalfSpace.Closed out, List<HalfSpace> toCome) {
      List<Facet> parts = new ArrayList<>(out.kept());
      List<Facet> own = out.closing();
      for (HalfSpace side : toCome) {
        for (Facet part : own) {
          side.opposite().part(part).forEach(off -> parts.add(off.as(Role.SEAM)));
        }
        own = own.stream().flatMap(part -> side.part(part).stream()).toList();
      }
      parts.addAll(own);
      return parts;
    }

    @Override
    public List<List<Facet>> inside(List<List<Facet>> pieces, Role cut) {
      List<List<Facet>> kept = new ArrayList<>();
      for (List<Facet> piece : pieces) {
        List<Facet> rest = piece;
        for (HalfSpace side : sides) {
          rest = side.closed(rest, cut);
        }
        if (!rest.isEmpty()) {
          kept.add(rest);
        }
      }
      return kept;
    }

    @Override
    public List<double[]> spans(Vec from, Vec to) {
      double low = 0;
      double high = 1;
      for (HalfSpace side : sides) {
        double at = side.at() - side.normal().dot(from);
        double along = side.normal().dot(to.minus(from));
        if (along == 0) {
          high = at < 0 ? -1 : high;
        } else if (along > 0) {
          high = Math.min(high, at / along);
        } else {
          low = Math.max(low, at / along);
        }
      }
      return high > low ? List.of(new double[] {low, high}) : List.of();
    }

    @Override
    public List<Facet> split(List<Facet> facets) {
      List<Facet> parts = new ArrayList<>();
      for (Facet facet : facets) {
        List<Facet> rest = List.of(facet);
        for (HalfSpace side : sides) {
          rest.forEach(part -> parts.addAll(side.opposite().part(part)));
          rest = rest.stream().flatMap(part -> side.part(part).stream()).toList();
        }
        rest.forEach(part -> parts.add(part.as(Role.SEAM)));
      }
      return parts;
    }
  }

  /** All that lies in one of several tools. */
  record AnyOf(List<Tool> parts) implements Tool {
    @Override
    public int planes() {
      return parts.stream().mapToInt(Tool::planes).sum();
    }

    @Override
    public List<List<Facet>> outside(List<List<Facet>> pieces, Role cut) {
      List<List<Facet>> rest = pieces;
      for (Tool part : parts) {
        rest = part.outside(rest, cut);
      }
      return rest;
    }

    @Override
    public List<List<Facet>> inside(List<List<Facet>> pieces, Role cut) {
      List<List<Facet>> kept = new ArrayList<>();
      List<List<Facet>> rest = pieces;
      for (Tool part : parts) {
        kept.addAll(part.inside(rest, cut));
        rest = part.outside(rest, Role.SEAM);
      }
      return kept;
    }

    @Override
    public List<double[]> spans(Vec from, Vec to) {
      return parts.stream().flatMap(part -> part.spans(from, to).stream()).toList();
    }

    @Override
    public List<Facet> split(List<Facet> facets) {
      List<Facet> rest = facets;
      for (Tool part : parts) {
        rest = part.split(rest);
      }
      return rest;
    }
  }

  /** What lies in one tool and not in another: a tube without its bore. */
  record Minus(Tool whole, Tool bore) implements Tool {
    @Override
    public int planes() {
      return whole.planes() + bore.planes();
    }

    @Override
    public List<List<Facet>> outside(List<List<Facet>> pieces, Role cut) {
      List<List<Facet>> kept = new ArrayList<>(whole.outside(pieces, cut));
      kept.addAll(bore.inside(whole.inside(pieces, Role.SEAM), cut));
      return kept;
    }

    @Override
    public List<List<Facet>> inside(List<List<Facet>> pieces, Role cut) {
      return bore.outside(whole.inside(pieces, cut), cut);
    }

    @Override
    public List<double[]> spans(Vec from, Vec to) {
      return Spans.minus(whole.spans(from, to), bore.spans(from, to));
    }

    @Override
    public List<Facet> split(List<Facet> facets) {
      return whole.split(facets);
    }
  }

  /** What lies in both of two tools. */
  record Both(Tool first, Tool second) implements Tool {
    @Override
    public int planes() {
      return first.planes() + second.planes();
    }

    @Override
    public List<List<Facet>> outside(List<List<Facet>> pieces, Role cut) {
      List<List<Facet>> kept = new ArrayList<>(first.outside(pieces, cut));
      kept.addAll(second.outside(first.inside(pieces, Role.SEAM), cut));
      return kept;
    }

    @Override
    public List<List<Facet>> inside(List<List<Facet>> pieces, Role cut) {
      return second.inside(first.inside(pieces, cut), cut);
    }

    @Override
    public List<double[]> spans(Vec from, Vec to) {
      return Spans.and(first.spans(from, to), second.spans(from, to));
    }

    @Override
    public List<Facet> split(List<Facet> facets) {
      List<Facet> parts = new ArrayList<>();
      for (Facet facet : facets) {
        for (Facet part : first.split(List.of(facet))) {
          boolean inFirst = part.role() == Role.SEAM && facet.role() != Role.SEAM;
          parts.addAll(inFirst ? second.split(List.of(part.as(facet.role()))) : List.of(part));
        }
      }
      return parts;
    }
  }
}
