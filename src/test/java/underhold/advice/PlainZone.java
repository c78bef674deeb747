package underhold.advice;

import org.jspecify.annotations.Nullable;
import underhold.site.FactView;

/**
 * The facts of a zone as plain fields, as somebody would hold them who writes rules by hand: words
 * are null and amounts NaN while nobody knows them; amounts in the inside unit of their measure.
 */
final class PlainZone {
  final @Nullable String digsBelowFooting;
  final @Nullable String drawdownAllowed;
  final @Nullable String drawdownHarm;
  final @Nullable String drawdownWorkable;
  final @Nullable String drillingFromAbove;
  final @Nullable String edgeGround;
  final @Nullable String edgeUnretained;
  final double excavationDepth;
  final @Nullable String excavationPosition;
  final @Nullable String excavationWall;
  final @Nullable String footingStrength;
  final double forecastRatio;
  final double headAboveExcavation;
  final double headAbovePitBase;
  final @Nullable String inScreeningZone;
  final @Nullable String insideAccess;
  final double insideHeadroom;
  final @Nullable String loadPattern;
  final @Nullable String oldPiles;
  final @Nullable String outsideAccess;
  final double outsideHeadroom;
  final double pitDepth;
  final @Nullable String pitGround;
  final @Nullable String programme;
  final @Nullable String rigBothSides;
  final @Nullable String rigFits;
  final @Nullable String rigFitsInside;
  final @Nullable String rigFitsOutside;
  final @Nullable String runningGround;
  final double seatBearingDepth;
  final double seatSpan;
  final double stabilityNumber;
  final @Nullable String stiffWallFirst;
  final @Nullable String structureCondition;
  final @Nullable String structureKind;
  final @Nullable String structureMaterial;
  final @Nullable String undermined;
  final double underminedLength;
  final @Nullable String utilities;
  final double wallLength;
  final @Nullable String wallOnPileLine;
  final @Nullable String wallOrEdgeBeside;
  final @Nullable String wallsTied;
  final @Nullable String waterBearing;
  final @Nullable String wetSeason;
  final @Nullable String worstSoil;

  PlainZone(FactView view) {
    digsBelowFooting = view.word("digsBelowFooting").orElse(null);
    drawdownAllowed = view.word("drawdownAllowed").orElse(null);
    drawdownHarm = view.word("drawdownHarm").orElse(null);
    drawdownWorkable = view.word("drawdownWorkable").orElse(null);
    drillingFromAbove = view.word("drillingFromAbove").orElse(null);
    edgeGround = view.word("edgeGround").orElse(null);
    edgeUnretained = view.word("edgeUnretained").orElse(null);
    excavationDepth = number(view, "excavationDepth");
    excavationPosition = view.word("excavationPosition").orElse(null);
    excavationWall = view.word("excavationWall").orElse(null);
    footingStrength = view.word("footingStrength").orElse(null);
    forecastRatio = number(view, "forecastRatio");
    headAboveExcavation = number(view, "headAboveExcavation");
    headAbovePitBase = number(view, "headAbovePitBase");
    inScreeningZone = view.word("inScreeningZone").orElse(null);
    insideAccess = view.word("insideAccess").orElse(null);
    insideHeadroom = number(view, "insideHeadroom");
    loadPattern = view.word("loadPattern").orElse(null);
    oldPiles = view.word("oldPiles").orElse(null);
    outsideAccess = view.word("outsideAccess").orElse(null);
    outsideHeadroom = number(view, "outsideHeadroom");
    pitDepth = number(view, "pitDepth");
    pitGround = view.word("pitGround").orElse(null);
    programme = view.word("programme").orElse(null);
    rigBothSides = view.word("rigBothSides").orElse(null);
    rigFits = view.word("rigFits").orElse(null);
    rigFitsInside = view.word("rigFitsInside").orElse(null);
    rigFitsOutside = view.word("rigFitsOutside").orElse(null);
    runningGround = view.word("runningGround").orElse(null);
    seatBearingDepth = number(view, "seatBearingDepth");
    seatSpan = number(view, "seatSpan");
    stabilityNumber = number(view, "stabilityNumber");
    stiffWallFirst = view.word("stiffWallFirst").orElse(null);
    structureCondition = view.word("structureCondition").orElse(null);
    structureKind = view.word("structureKind").orElse(null);
    structureMaterial = view.word("structureMaterial").orElse(null);
    undermined = view.word("undermined").orElse(null);
    underminedLength = number(view, "underminedLength");
    utilities = view.word("utilities").orElse(null);
    wallLength = number(view, "wallLength");
    wallOnPileLine = view.word("wallOnPileLine").orElse(null);
    wallOrEdgeBeside = view.word("wallOrEdgeBeside").orElse(null);
    wallsTied = view.word("wallsTied").orElse(null);
    waterBearing = view.word("waterBearing").orElse(null);
    wetSeason = view.word("wetSeason").orElse(null);
    worstSoil = view.word("worstSoil").orElse(null);
  }

  private static double number(FactView view, String name) {
    return view.amount(name).map(amount -> amount.si()).orElse(Double.NaN);
  }
}
