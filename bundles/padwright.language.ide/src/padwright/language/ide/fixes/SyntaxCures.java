package padwright.language.ide.fixes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.LengthUnit;
import padwright.language.edit.TextEdit;
import padwright.language.ide.words.Messages;
import padwright.language.parser.SyntaxMessages;

/** Cures for text that cannot be read, where it can be told what was meant. */
final class SyntaxCures {

	private static final int HOURS = 12;
	private static final BigDecimal TWELVE = BigDecimal.valueOf(HOURS);
	/** How far a piece goes on where it is not said yet, in half hours: a sixth of the rim. */
	private static final int USUAL_ARC = 4;

	/** A piece that is written up to here, with the word or comma before it. */
	private static final Pattern PIECE = Pattern.compile(
			"\\s*(?:,|\\bshim\\b)\\s*(?:[\\d.]+(?:\\s*(?:" + String.join("|", LengthUnit.symbols())
					+ "))?(?:\\s+from(?:\\s+([\\d.]+)(?:\\s+(to))?)?)?)?$");

	private SyntaxCures() {
	}

	static List<Fix> of(Site site) {
		if (site.data().contains(SyntaxMessages.HOUR)) {
			return hour(site);
		}
		List<Fix> piece = site.data().contains(SyntaxMessages.UNFINISHED) ? unfinished(site) : List.of();
		return piece.isEmpty() ? RowOrder.of(text(site), site.offset()).stream().toList() : piece;
	}

	private static String text(Site site) {
		return site.element() == null ? "" : NodeModelUtils.getNode(site.element()).getRootNode().getText();
	}

	/** The hour of a clock of twelve, as 2 for 14; the nearest half hour for one between. */
	private static List<Fix> hour(Site site) {
		BigDecimal half = BigDecimal.valueOf(2);
		try {
			BigDecimal written = new BigDecimal(site.text());
			BigDecimal round = written.multiply(half).setScale(0, RoundingMode.HALF_UP).divide(half).remainder(TWELVE);
			ClockHour hour = ClockHour.ofHour(round.signum() == 0 ? TWELVE : round);
			return written.compareTo(TWELVE.multiply(half)) > 0 ? List.of()
					: List.of(site.replace(Messages.of("fix.changeTo", hour), hour.toString()));
		} catch (IllegalArgumentException noHour) {
			return List.of();
		}
	}

	/** Completes a piece that has a start, and takes it away. */
	private static List<Fix> unfinished(Site site) {
		int end = site.offset() + site.text().length();
		Matcher piece = PIECE.matcher(text(site).substring(0, end));
		if (!piece.find()) {
			return List.of();
		}
		Fix away = Fix.of(Messages.of("fix.removePiece"), new TextEdit(piece.start(), end - piece.start(), ""));
		Optional<Fix> complete = Optional.ofNullable(piece.group(1)).flatMap(SyntaxCures::usualEnd)
				.map(to -> Fix.of(Messages.of("fix.completePiece", to),
						new TextEdit(end, 0, (piece.group(2) == null ? " to " : " ") + to)));
		return Stream.concat(complete.stream(), Stream.of(away)).toList();
	}

	private static Optional<ClockHour> usualEnd(String from) {
		try {
			return Optional.of(ClockHour.ofHour(new BigDecimal(from)).plusHalfHours(USUAL_ARC));
		} catch (IllegalArgumentException noHour) {
			return Optional.empty();
		}
	}
}
