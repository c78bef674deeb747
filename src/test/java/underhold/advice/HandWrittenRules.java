package underhold.advice;

import java.util.List;

/**
 * Rules of the pack written by hand as plain Java, against which the cost of the rules is measured:
 * the same conditions on fields, nothing else. The limits are those of the pack.
 */
final class HandWrittenRules {
  private final double atTheFooting;
  private final double forecastFull;
  private final double forecastShare;
  private final double longWall;
  private final double needleAreaLength;
  private final double needleSpan;
  private final double noHead;
  private final double pitDepthDeep;
  private final double pitDepthEasy;
  private final double pitDepthLifts;
  private final double rigHeadroom;
  private final double seatBearingDepth;
  private final double specialRigHeadroom;
  private final double stabilityNumber;

  HandWrittenRules(Limits limits) {
    atTheFooting = limits.require("at-the-footing").si();
    forecastFull = limits.require("forecast-full").si();
    forecastShare = limits.require("forecast-share").si();
    longWall = limits.require("long-wall").si();
    needleAreaLength = limits.require("needle-area-length").si();
    needleSpan = limits.require("needle-span").si();
    noHead = limits.require("no-head").si();
    pitDepthDeep = limits.require("pit-depth-deep").si();
    pitDepthEasy = limits.require("pit-depth-easy").si();
    pitDepthLifts = limits.require("pit-depth-lifts").si();
    rigHeadroom = limits.require("rig-headroom").si();
    seatBearingDepth = limits.require("seat-bearing-depth").si();
    specialRigHeadroom = limits.require("special-rig-headroom").si();
    stabilityNumber = limits.require("stability-number").si();
  }

  /** The ids of the rules that are written here. */
  static final List<String> IDS =
      List.of(
          "ANY-16", "MPB-02", "DRP-04", "HYB-03", "INT-01", "NON-04a", "NDL-01", "PIT-04a",
          "REF-02", "ANY-18a", "MPB-15a", "DRP-05", "HYB-04a", "INT-04a", "NON-04b", "NDL-15",
          "PIT-04b", "REF-13", "ANY-18b", "MPB-15b", "DRP-04b", "HYB-04b", "INT-04b", "NON-12b",
          "NDL-03a", "PIT-05a", "REF-03", "ANY-19", "MPB-07", "DRP-04c", "HYB-07", "INT-04c",
          "NON-12c", "NDL-03c", "PIT-05b", "REF-03b", "ANY-20", "MPB-09a", "DRP-19a", "HYB-08",
          "INT-08", "NON-12a", "NDL-03b", "PIT-06a", "REF-03c", "ANY-21", "MPB-09b", "DRP-19b");

  /** Adds the ids of the rules that fire. */
  void fire(PlainZone zone, List<String> fired) {
    fire1(zone, fired);
    fire2(zone, fired);
    fire3(zone, fired);
    fire4(zone, fired);
    fire5(zone, fired);
    fire6(zone, fired);
  }

  private void fire1(PlainZone zone, List<String> fired) {
    if (("unreinforced-masonry".equals(zone.structureMaterial)
            || "rubble".equals(zone.structureMaterial))
        && "no".equals(zone.wallsTied)) {
      fired.add("ANY-16");
    }
    if ("yes".equals(zone.wallOrEdgeBeside) && "yes".equals(zone.rigFitsOutside)) {
      fired.add("MPB-02");
    }
    if ("no".equals(zone.rigFitsOutside)
        && "no".equals(zone.rigFitsInside)
        && "no".equals(zone.drillingFromAbove)) {
      fired.add("DRP-04");
    }
    if ("yes".equals(zone.runningGround) && "no".equals(zone.drawdownWorkable)) {
      fired.add("HYB-03");
    }
    if ("continuous".equals(zone.loadPattern) && "yes".equals(zone.runningGround)) {
      fired.add("INT-01");
    }
    if ("yes".equals(zone.stiffWallFirst)
        && "no".equals(zone.undermined)
        && zone.forecastRatio <= forecastShare) {
      fired.add("NON-04a");
    }
    if ("concentrated".equals(zone.loadPattern)
        && "crosses-support".equals(zone.excavationPosition)
        && zone.seatSpan <= needleSpan
        && zone.seatBearingDepth <= seatBearingDepth
        && ("none".equals(zone.oldPiles)
            || "stay".equals(zone.oldPiles)
            || "timber".equals(zone.oldPiles))) {
      fired.add("NDL-01");
    }
    if ("continuous".equals(zone.loadPattern)
        && "good".equals(zone.pitGround)
        && zone.pitDepth > atTheFooting
        && zone.pitDepth <= pitDepthEasy) {
      fired.add("PIT-04a");
    }
  }

  private void fire2(PlainZone zone, List<String> fired) {
    if ("yes".equals(zone.runningGround)
        && "no".equals(zone.drawdownWorkable)
        && "yes".equals(zone.undermined)
        && "no".equals(zone.rigFits)) {
      fired.add("REF-02");
    }
    if (("yes".equals(zone.drawdownAllowed) || "limited".equals(zone.drawdownAllowed))
        && zone.headAbovePitBase > noHead
        && ("clay-or-peat".equals(zone.drawdownHarm) || "timber-piles".equals(zone.drawdownHarm))) {
      fired.add("ANY-18a");
    }
    if ("no".equals(zone.rigFitsOutside)
        && "no".equals(zone.rigFitsInside)
        && "no".equals(zone.drillingFromAbove)) {
      fired.add("MPB-15a");
    }
    if (("none".equals(zone.outsideAccess) || "hand".equals(zone.outsideAccess))
        && ("none".equals(zone.insideAccess) || "hand".equals(zone.insideAccess))) {
      fired.add("DRP-05");
    }
    if ("no".equals(zone.rigFitsOutside)
        && "no".equals(zone.rigFitsInside)
        && "no".equals(zone.drillingFromAbove)) {
      fired.add("HYB-04a");
    }
    if ("rubble".equals(zone.footingStrength)) {
      fired.add("INT-04a");
    }
    if ("yes".equals(zone.stiffWallFirst)
        && "no".equals(zone.undermined)
        && Double.isNaN(zone.forecastRatio)) {
      fired.add("NON-04b");
    }
    if ("concentrated".equals(zone.loadPattern) && "yes".equals(zone.undermined)) {
      fired.add("NDL-15");
    }
  }

  private void fire3(PlainZone zone, List<String> fired) {
    if ("continuous".equals(zone.loadPattern)
        && "boarded".equals(zone.pitGround)
        && zone.pitDepth > atTheFooting
        && zone.pitDepth <= pitDepthEasy) {
      fired.add("PIT-04b");
    }
    if ("yes".equals(zone.edgeUnretained)
        && "earth".equals(zone.edgeGround)
        && "yes".equals(zone.waterBearing)
        && "no".equals(zone.drawdownWorkable)
        && zone.headAboveExcavation > noHead) {
      fired.add("REF-13");
    }
    if (Double.isNaN(zone.headAbovePitBase)
        && ("yes".equals(zone.drawdownAllowed) || "limited".equals(zone.drawdownAllowed))
        && zone.headAboveExcavation > noHead
        && ("clay-or-peat".equals(zone.drawdownHarm) || "timber-piles".equals(zone.drawdownHarm))) {
      fired.add("ANY-18b");
    }
    if (("none".equals(zone.outsideAccess) || "hand".equals(zone.outsideAccess))
        && ("none".equals(zone.insideAccess) || "hand".equals(zone.insideAccess))) {
      fired.add("MPB-15b");
    }
    if (zone.insideHeadroom >= specialRigHeadroom && zone.insideHeadroom < rigHeadroom) {
      fired.add("DRP-04b");
    }
    if (("none".equals(zone.outsideAccess) || "hand".equals(zone.outsideAccess))
        && ("none".equals(zone.insideAccess) || "hand".equals(zone.insideAccess))) {
      fired.add("HYB-04b");
    }
    if ("rubble".equals(zone.structureMaterial)) {
      fired.add("INT-04b");
    }
    if ("flexible".equals(zone.excavationWall) && "yes".equals(zone.runningGround)) {
      fired.add("NON-12b");
    }
  }

  private void fire4(PlainZone zone, List<String> fired) {
    if ("continuous".equals(zone.loadPattern)
        && zone.wallLength > needleAreaLength
        && ("building-wall".equals(zone.structureKind)
            || "building-frame".equals(zone.structureKind)
            || "bridge-pier".equals(zone.structureKind)
            || "elevated-rail-bent".equals(zone.structureKind)
            || "tower-or-monument".equals(zone.structureKind)
            || "retaining-wall".equals(zone.structureKind)
            || "large-utility".equals(zone.structureKind)
            || "rail-yard".equals(zone.structureKind)
            || "road-on-grade".equals(zone.structureKind))) {
      fired.add("NDL-03a");
    }
    if ("continuous".equals(zone.loadPattern)
        && ("good".equals(zone.pitGround) || "boarded".equals(zone.pitGround))
        && zone.pitDepth > pitDepthEasy
        && zone.pitDepth <= pitDepthLifts) {
      fired.add("PIT-05a");
    }
    if (zone.stabilityNumber > stabilityNumber) {
      fired.add("REF-03");
    }
    if (("partly-under".equals(zone.excavationPosition)
        || "wholly-under".equals(zone.excavationPosition))) {
      fired.add("ANY-19");
    }
    if ("yes".equals(zone.wallOrEdgeBeside) && "yes".equals(zone.wallOnPileLine)) {
      fired.add("MPB-07");
    }
    if (zone.outsideHeadroom >= specialRigHeadroom && zone.outsideHeadroom < rigHeadroom) {
      fired.add("DRP-04c");
    }
    if ("yes".equals(zone.edgeUnretained)) {
      fired.add("HYB-07");
    }
    if ("unreinforced-masonry".equals(zone.structureMaterial)
        && ("poor".equals(zone.structureCondition)
            || "dangerous".equals(zone.structureCondition))) {
      fired.add("INT-04c");
    }
  }

  private void fire5(PlainZone zone, List<String> fired) {
    if ("none".equals(zone.excavationWall)
        && "yes".equals(zone.runningGround)
        && ("beside".equals(zone.excavationPosition)
            || "inside-walls".equals(zone.excavationPosition)
            || "partly-under".equals(zone.excavationPosition)
            || "wholly-under".equals(zone.excavationPosition)
            || "crosses-support".equals(zone.excavationPosition))) {
      fired.add("NON-12c");
    }
    if ("continuous".equals(zone.loadPattern)
        && Double.isNaN(zone.wallLength)
        && ("building-wall".equals(zone.structureKind)
            || "building-frame".equals(zone.structureKind)
            || "bridge-pier".equals(zone.structureKind)
            || "elevated-rail-bent".equals(zone.structureKind)
            || "tower-or-monument".equals(zone.structureKind)
            || "retaining-wall".equals(zone.structureKind)
            || "large-utility".equals(zone.structureKind)
            || "rail-yard".equals(zone.structureKind)
            || "road-on-grade".equals(zone.structureKind))) {
      fired.add("NDL-03c");
    }
    if (zone.pitDepth > pitDepthEasy) {
      fired.add("PIT-05b");
    }
    if ("soft-clay".equals(zone.worstSoil)
        && Double.isNaN(zone.stabilityNumber)
        && "yes".equals(zone.digsBelowFooting)) {
      fired.add("REF-03b");
    }
    if ("yes".equals(zone.wetSeason) && "yes".equals(zone.inScreeningZone)) {
      fired.add("ANY-20");
    }
    if ("tight".equals(zone.programme)
        && "yes".equals(zone.wallOrEdgeBeside)
        && "continuous".equals(zone.loadPattern)
        && zone.wallLength > longWall) {
      fired.add("MPB-09a");
    }
    if ("yes".equals(zone.wallOrEdgeBeside)
        && "no".equals(zone.rigFitsInside)
        && "no".equals(zone.rigBothSides)) {
      fired.add("DRP-19a");
    }
    if ("yes".equals(zone.edgeUnretained)) {
      fired.add("HYB-08");
    }
  }

  private void fire6(PlainZone zone, List<String> fired) {
    if ("yes".equals(zone.stiffWallFirst)
        && "no".equals(zone.undermined)
        && zone.forecastRatio <= forecastFull) {
      fired.add("INT-08");
    }
    if ("stiff".equals(zone.excavationWall) && "yes".equals(zone.runningGround)) {
      fired.add("NON-12a");
    }
    if ("area".equals(zone.loadPattern)
        && zone.underminedLength > needleAreaLength
        && ("building-wall".equals(zone.structureKind)
            || "building-frame".equals(zone.structureKind)
            || "bridge-pier".equals(zone.structureKind)
            || "elevated-rail-bent".equals(zone.structureKind)
            || "tower-or-monument".equals(zone.structureKind)
            || "retaining-wall".equals(zone.structureKind)
            || "large-utility".equals(zone.structureKind)
            || "rail-yard".equals(zone.structureKind)
            || "road-on-grade".equals(zone.structureKind))) {
      fired.add("NDL-03b");
    }
    if (zone.pitDepth > pitDepthLifts && zone.pitDepth <= pitDepthDeep) {
      fired.add("PIT-06a");
    }
    if ("soft-clay".equals(zone.worstSoil)
        && Double.isNaN(zone.excavationDepth)
        && "yes".equals(zone.digsBelowFooting)) {
      fired.add("REF-03c");
    }
    if (("few".equals(zone.utilities) || "dense".equals(zone.utilities))) {
      fired.add("ANY-21");
    }
    if ("tight".equals(zone.programme)
        && "yes".equals(zone.wallOrEdgeBeside)
        && "continuous".equals(zone.loadPattern)
        && Double.isNaN(zone.wallLength)) {
      fired.add("MPB-09b");
    }
    if ("yes".equals(zone.wallOrEdgeBeside)
        && "no".equals(zone.rigFitsInside)
        && zone.rigBothSides == null) {
      fired.add("DRP-19b");
    }
  }
}
