package padwright.language.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.language.shop.ShopFinding;
import padwright.language.validation.PadwrightValidator;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Severity;

/** Finds the plans of one name in several files, which nobody sees who judges one file at a time. */
final class Duplicates {

	private final Map<String, Integer> counts = new HashMap<>();

	private Duplicates() {
	}

	/** @param judged the files whose findings are asked for, out of {@code all} */
	static Duplicates among(Collection<FileState> judged, Collection<FileState> all, CheckWorkers team,
			Map<Path, String> otherTexts) {
		Duplicates duplicates = new Duplicates();
		Set<Path> counted = new HashSet<>();
		for (FileState state : judged) {
			counted.add(state.file());
			duplicates.count(state.known().result());
		}
		for (FileState state : all) {
			if (!duplicates.counts.isEmpty() && counted.add(state.file())) {
				duplicates.countOther(state, team, otherTexts);
			}
		}
		return duplicates;
	}

	private void countOther(FileState state, CheckWorkers team, Map<Path, String> otherTexts) {
		if (state.known() != null) {
			count(state.known().result());
		} else if (state.text(otherTexts).planNames().stream().anyMatch(counts::containsKey)) {
			count(team.describe(state));
		}
	}

	private void count(FileResult file) {
		file.plans().forEach(plan -> counts.merge(plan.name(), 1, Integer::sum));
	}

	/** The findings in a file, those on such plans too. */
	List<ShopFinding> withThem(FileState state) {
		FileResult file = state.known().result();
		if (file.plans().stream().allMatch(plan -> counts.get(plan.name()) == 1)) {
			return file.findings();
		}
		List<ShopFinding> all = new ArrayList<>(file.findings());
		file.plans().stream().filter(plan -> counts.get(plan.name()) > 1)
				.map(plan -> new ShopFinding(state.file(), plan.line(), plan.column(), Severity.ERROR,
						IssueCodes.DUPLICATE_NAME, PadwrightValidator.duplicate(plan.name()).inOneLine()))
				.filter(finding -> !all.contains(finding)).forEach(all::add);
		all.sort(ShopFinding.ORDER);
		return all;
	}
}
