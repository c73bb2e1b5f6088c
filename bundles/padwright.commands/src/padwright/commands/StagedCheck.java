package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import padwright.language.shop.ShopFinding;

/**
 * Checks what is staged in git, and what it breaks in documents that are not staged: these are checked as they would
 * stand, and what was wrong in them before is not told.
 */
final class StagedCheck {

	private final StagedFiles staged;
	private final boolean afresh;
	private final List<ShopFinding> findings = new ArrayList<>();
	private final List<ShopFinding> broken = new ArrayList<>();
	private int others;

	private StagedCheck(StagedFiles staged, boolean afresh) {
		this.staged = staged;
		this.afresh = afresh;
	}

	/**
	 * Nothing where it was ended before its end.
	 *
	 * @param afresh whether former results are passed over
	 */
	static Optional<CheckOutcome> of(StagedFiles staged, boolean afresh, PrintWriter err) {
		List<ChosenFiles> shops = ChosenFiles.in(staged.changed(), staged.texts());
		StagedCheck check = new StagedCheck(staged, afresh);
		int steps = shops.stream().mapToInt(shop -> check.looked(shop).size()).sum();
		try (CheckRun run = new CheckRun(new Progress(err, "checking", steps))) {
			shops.forEach(shop -> check.look(shop, run));
			return run.isStopped() ? Optional.empty() : Optional.of(
					new CheckOutcome(staged.chosen().size(), check.findings, check.others, check.broken));
		}
	}

	/** Others can use a system or a stock, but not a plan. */
	private Collection<Path> looked(ChosenFiles shop) {
		return shop.chosen().stream().anyMatch(this::mayBeUsed) ? shop.all() : shop.chosen();
	}

	private boolean mayBeUsed(Path file) {
		String both = staged.texts().get(file) + staged.before().get(file);
		return both.contains("system") || both.contains("stock");
	}

	private void look(ChosenFiles shop, CheckRun run) {
		Collection<Path> looked = looked(shop);
		others += looked.size() - shop.chosen().size();
		List<ShopFinding> elsewhere = new ArrayList<>();
		run.findings(new ChosenFiles(shop.top(), looked, shop.all()), staged.texts(), afresh).forEach(finding ->
				(shop.chosen().contains(finding.file()) ? findings : elsewhere).add(finding));
		if (!elsewhere.isEmpty()) {
			broken.addAll(notKnown(elsewhere, shop, run));
		}
	}

	private List<ShopFinding> notKnown(List<ShopFinding> now, ChosenFiles shop, CheckRun run) {
		Set<Path> files = now.stream().map(ShopFinding::file).collect(Collectors.toCollection(TreeSet::new));
		Map<Path, String> before = staged.before();
		Set<List<Object>> known = run.findings(new ChosenFiles(shop.top(), files, shop.all()), before, true).stream()
				.map(StagedCheck::kind).collect(Collectors.toSet());
		return now.stream().filter(finding -> !known.contains(kind(finding))).toList();
	}

	/** Figures in a message may have changed with the system, and it is the same finding. */
	private static List<Object> kind(ShopFinding finding) {
		return List.of(finding.file(), finding.line(), finding.column(), finding.code());
	}
}
