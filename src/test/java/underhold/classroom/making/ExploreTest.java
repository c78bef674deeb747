package underhold.classroom.making;

import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.classroom.Level;
import underhold.consult.Consultant;

class ExploreTest {
  @Test
  void explore() throws Exception {
    CaseMaker maker = new CaseMaker(Consultant.standard());
    var bean =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    for (int r = 0; r < 2; r++)
      for (String w : System.getProperty("only").split(";")) {
        String[] p = w.strip().split(" ");
        long t = bean.getProcessCpuTime();
        Making m =
            maker.make(
                new Wish(
                    SupportOption.find(p[0]).get(),
                    Level.find(p[2]).get(),
                    Theme.find(p[1]).get(),
                    Integer.parseInt(p[3])),
                1500);
        System.out.println(
            w
                + " cpu ms "
                + (bean.getProcessCpuTime() - t) / 1000000
                + " "
                + (m instanceof Making.Found f ? f.tries() : -1));
      }
  }
}
