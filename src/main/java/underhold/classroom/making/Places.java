package underhold.classroom.making;

import java.util.List;

/** Names of places that are nowhere, made of two words. */
final class Places {
  private static final List<String> FIRST =
      List.of(
          "Quillet",
          "Tansy",
          "Brindle",
          "Marl",
          "Hollowreed",
          "Saffron",
          "Thimble",
          "Cinder",
          "Larkspur",
          "Sedge",
          "Wren",
          "Copperbeck",
          "Dovetail",
          "Ember",
          "Fallow",
          "Gannet",
          "Hazelnut",
          "Ironstone",
          "Juniper",
          "Kittiwake",
          "Linnet",
          "Mullein",
          "Nettle",
          "Osier",
          "Pewter",
          "Quarrel",
          "Rushlight",
          "Samphire",
          "Teasel",
          "Umber",
          "Vetch",
          "Wicker",
          "Yarrow",
          "Bellows",
          "Candle",
          "Drover",
          "Fuller",
          "Glover",
          "Hopper",
          "Ladder",
          "Mallet",
          "Needle",
          "Packhorse",
          "Ropemaker",
          "Sawpit",
          "Trestle",
          "Wheelwright",
          "Bobbin");
  private static final List<String> SECOND =
      List.of(
          "Row", "Yard", "Court", "Lane", "Steps", "Mews", "Cross", "Wharf", "Gate", "Place",
          "Terrace", "Corner", "Street", "Green", "Bank", "Passage", "Quay", "Square");

  private Places() {}

  static String name(Draw draw) {
    return draw.pick(FIRST) + " " + draw.pick(SECOND);
  }
}
