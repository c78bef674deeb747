package underhold.sizing.edgepits;
import underhold.quantity.UnitSystem;
import underhold.sizing.*;
import org.junit.jupiter.api.Test;
class EdgePitsShow {
  @Test
  void show() throws Exception {
    Sheet sheet = EdgeSites.size(EdgeSites.box());
    java.nio.file.Files.write(java.nio.file.Path.of("/tmp/edge-sheet.txt"), SheetText.lines(sheet, UnitSystem.SI));
    StepProof.redo(sheet);
  }
}
