package sheathwright.cli.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.solve.PlanProof;

/** What came of a plan of cuts and its certificate, as lines of a terminal. */
final class VerifiedPlan {

  private VerifiedPlan() {}

  static List<String> of(PlanProof proof) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "the plan: "
            + proof.plan()
            + proof.fault().map(fault -> "; WRONG: " + fault).orElse("; every piece is cut"));
    lines.add(
        proof.isHeld()
            ? "its certificate, checked without a search: no plan takes less than " + proof.least()
            : "its certificate does NOT prove that no plan takes less than " + proof.least());
    if (proof.holds()) {
      lines.add(
          proof.isProven()
              ? "they meet: no plan is better"
              : "they do not meet: the certificate alone leaves that open");
    }
    return lines;
  }

  /** The same for whoever reads objects. */
  static List<Map<String, Object>> named(PlanProof proof) {
    Map<String, Object> named = new LinkedHashMap<>();
    named.put("plan", proof.plan());
    named.put("fault", proof.fault().orElse(null));
    named.put("least", proof.least());
    named.put("certificate_holds", proof.isHeld());
    named.put("proven", proof.holds() && proof.isProven());
    return List.of(named);
  }
}
