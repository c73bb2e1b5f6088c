package padwright.workup.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.stock.Letterhead;
import padwright.model.stock.PaperName;
import padwright.model.stock.Stock;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Messages;

/** The letterhead of a plan's papers: that of its stock, else of the nearest stock that it is kept with. */
public final class Letterheads {

	private Letterheads() {
	}

	public static Optional<Letterhead> of(ServicePlan plan) {
		return plan.stock().flatMap(stock -> nearest(stock, new LinkedHashSet<>()));
	}

	private static Optional<Letterhead> nearest(Stock stock, Set<Stock> seen) {
		if (Resolved.of(stock).isEmpty() || !seen.add(stock)) {
			return Optional.empty();
		}
		return Stream.concat(Optional.ofNullable(stock.getLetterhead()).stream(),
				stock.getShared().stream().flatMap(shared -> nearest(shared, seen).stream())).findFirst();
	}

	/** Where the logo should be; nothing where none is named or its path leads nowhere. */
	public static Optional<Path> logo(Letterhead letterhead) {
		return FileBeside.of(letterhead, letterhead.getLogo()).filter(Files::isRegularFile);
	}

	/** That there is no such logo. */
	public static String missing(Letterhead letterhead) {
		return Messages.of("logo.missing", letterhead.getLogo());
	}

	/** That the logo is no picture. */
	public static String unread(Letterhead letterhead) {
		return Messages.of("logo.unread", letterhead.getLogo());
	}

	/** What the shop says on one kind of its papers besides. */
	public static List<String> words(ServicePlan plan, PaperName paper) {
		return of(plan).stream().flatMap(head -> head.getWords().stream()).filter(words -> words.getPaper() == paper)
				.flatMap(words -> words.getLines().stream()).toList();
	}
}
