package underhold.report.dossier;

import underhold.advice.SupportOption;

/**
 * The methods in plain words, for readers who are no engineers: judgement, without numbers.
 *
 * @param what what is done
 * @param seen what those who live or work there see, hear and are asked for
 */
record MethodWords(String what, String seen) {
  static MethodWords of(SupportOption option) {
    return switch (option) {
      case PITS ->
          new MethodWords(
              "Small pits are dug by hand under the footing, a few at a time and far apart. Each is"
                  + " lined with boards, filled with concrete and packed tight to the old footing"
                  + " before its neighbour is dug, until the whole length stands on a deeper footing.",
              "People dig beside and under the structure; soil is carried out and concrete in. Work"
                  + " goes in rounds, with waits while concrete hardens. The concrete stays in the"
                  + " ground, also under a neighbour's part where the wall is shared.");
      case NEEDLES ->
          new MethodWords(
              "Steel beams, called needles, are put through or under the structure and carry it to"
                  + " supports clear of the excavation while the old footing is taken away and a new"
                  + " one is built.",
              "Openings are cut or brackets fixed to the structure; beams, supports and jacks stand in"
                  + " the way on both sides until the new footing carries.");
      case DRILLED_PILES ->
          new MethodWords(
              "Piles are drilled past the bottom of the excavation, beams or caps join them to the"
                  + " structure, and jacks move its load on to them before the ground is taken away.",
              "Drilling rigs work beside or inside the structure, with noise, some vibration, water and"
                  + " spoil. Piles and beams stay.");
      case BRACKET_PILES ->
          new MethodWords(
              "Small piles are drilled just outside the structure, and steel brackets on their heads"
                  + " hold its edge.",
              "A small rig works along the edge, with noise, some vibration, water and spoil. Brackets"
                  + " are fixed to the structure and need room beside it; piles and brackets stay as"
                  + " long as they carry.");
      case EDGE_PITS ->
          new MethodWords(
              "Drilled piles carry the structure. Along the edge of the excavation pits are dug by hand"
                  + " and concreted one by one, so that they become a wall that holds back the ground"
                  + " under it.",
              "Drilling rigs and later people in pits work at the edge, with noise, some vibration and"
                  + " spoil. The wall is braced or tied while the ground before it is dug.");
      case MONITOR ->
          new MethodWords(
              "The structure is not underpinned. It is protected and watched, and the work beside it"
                  + " changes or stops when its movement reaches levels agreed before.",
              "Survey points and gauges are fixed to the structure and read until movement is over.");
      case REFER ->
          new MethodWords(
              "None of the usual methods is recommended. A specialist is asked first: for treating or"
                  + " freezing the ground, for example, or for elements that are jacked down.",
              "A survey and an investigation come before any method is chosen.");
    };
  }
}
