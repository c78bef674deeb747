package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/** A building on a raft, with a dig that reaches in below it. */
final class RaftOverDig implements SiteKind {
  private static final List<Scene> SCENES =
      List.of(
          new Scene(
              "A link between two cellars is to be dug in under the edge of a laboratory on a raft.",
              "Instruments in the building may not be stopped.",
              "raft edge",
              "the raft"),
          new Scene(
              "A ramp into a car park cuts below the corner of a hotel on a raft.",
              "The hotel is full in summer.",
              "raft corner",
              "the raft"),
          new Scene(
              "A pump pit must go in below a silo that stands on a raft.",
              "The silo is filled and emptied every week.",
              "silo raft",
              "the raft"));

  @Override
  public String name() {
    return "raft over a dig";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(SupportOption.DRILLED_PILES, SupportOption.EDGE_PITS, SupportOption.REFER);
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch = new Sketch(draw);
    Typing typing = draw.typing();
    Map<String, String> zone = sketch.zone(draw.pick(SCENES));
    boolean silo = sketch.first().startsWith("silo");
    boolean laboratory = sketch.scene().stands().startsWith("Instruments");
    Common.job(sketch, "building-frame", laboratory || silo ? "critical-plant" : "occupied");
    double founding = Typing.metres(Common.founding(draw, 1.4, 3));
    double dig = Typing.metres(typing.length(founding + draw.between(2.4, 5)));
    sketch.site().put("excavationDepth", typing.length(dig));
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    zone.put("loadPattern", "area");
    zone.put("excavationPosition", "partly-under");
    zone.put("structureMaterial", "reinforced-concrete");
    Common.condition(sketch, zone, laboratory ? 5 : 8, laboratory ? 8 : 16);
    int storeys = draw.whole(3, 6);
    double pressure = GroundKind.pressure(sketch.layers(), founding);
    if (!silo) {
      sketch.site().put("storeys", String.valueOf(storeys));
    }
    double load = silo ? draw.between(90, 160) : 15 + storeys * draw.between(11, 14);
    zone.put("areaLoad", typing.areaLoad(Math.min(load, Math.max(45, pressure))));
    zone.put("lateralDemand", draw.pick("low", "low", "moderate"));
    zone.put("foundationKind", "raft");
    zone.put("foundingDepth", typing.length(founding));
    zone.put("footingStrength", draw.pick("strong-concrete", "strong-concrete", "plain-concrete"));
    zone.put("oldPiles", "none");
    zone.put("obstructions", draw.pick("none", "none", "occasional", "frequent"));
    double length = draw.between(4, 14);
    zone.put("underminedLength", typing.length(length));
    zone.put("underminedWidth", typing.length(draw.between(1.2, 4.5)));
    boolean open = draw.chance(0.6);
    zone.put("wallGapLength", typing.length(open ? length : 0));
    if (open) {
      BoxOverCut.edge(sketch, zone);
    }
    zone.put("seatSpan", typing.length(length + draw.between(1.5, 3)));
    zone.put("seatInsidePossible", draw.pick("no", "no", "yes"));
    zone.put("roomForBeams", draw.pick("yes", "no"));
    zone.put("excavationWall", draw.pick("flexible", "stiff"));
    Common.access(
        sketch,
        zone,
        draw.pick("small-rig", "large-rig", "hand"),
        draw.pick("hand", "small-rig", "none"));
    Common.bothSides(sketch, zone);
    zone.put("drillingFromAbove", draw.pick("yes", "no"));
    zone.put("freeEdge", draw.pick("yes", "no"));
    zone.put("landRights", "not-needed");
    return sketch;
  }
}
