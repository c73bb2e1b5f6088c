package padwright.language.archive;

import java.util.List;

import padwright.language.shop.ShopFinding;
import padwright.workup.checks.IssueCodes;

/**
 * What reading and judging one file gave, as far as it does not depend on the plans in other files.
 *
 * @param findings in the order of lines
 * @param plans the names of its plans, each once
 * @param names the systems, stocks and articles that it gives to others, each with its kind
 * @param uses the files it has links to, by their paths in the shop
 * @param asksForNames whether a link leads nowhere, so that its message lists names of the shop
 */
record FileResult(List<ShopFinding> findings, List<PlanName> plans, List<String> names, List<String> uses,
		boolean asksForNames) {

	FileResult {
		findings = List.copyOf(findings);
		plans = List.copyOf(plans);
		names = List.copyOf(names);
		uses = List.copyOf(uses);
	}

	/** Whether the file could be read at all. */
	boolean isOfUsable() {
		return findings.stream().noneMatch(finding -> finding.code().equals(IssueCodes.UNREADABLE));
	}
}
