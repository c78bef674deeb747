package underhold.sizing.needles;

import java.util.List;
import underhold.mechanics.steel.RolledSection;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** The strength of a needle by one code. */
interface SteelCode {
  /** Whether the code's formulas here hold for a section. */
  boolean covers(RolledSection section);

  /** Bending, shear and web of a section, each demand against its capacity. */
  List<Limb> limbs(RolledSection section, NeedleBeam beam);

  /** Writes how they come about. */
  void write(SheetBuilder sheet, RolledSection section, NeedleBeam beam);

  /** What the code's check cites. */
  Source source();

  static SteelCode of(NeedleCase site) {
    return site.eurocode() ? new EurocodeNeedle(site) : new AiscNeedle(site);
  }
}
