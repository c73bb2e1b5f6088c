package padwright.views.rows;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.rim.Harmonic;
import padwright.engine.rim.ProfileSplit;
import padwright.model.plan.Round;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.map.KeyState;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.RoundEffect;

/** The columns of the table of keys. Lengths in thou, but cups in mm. */
public enum KeyColumn {

	KEY(90, false, KeyRow::label, Comparator.comparing(KeyRow::place)),
	STATE(205, false, row -> row.state().inWords(), Comparator.comparing((KeyRow row) -> row.state())),
	CUP(96, true, row -> row.cup().map(Figures::millimetres).orElse(""), lengths(KeyRow::cup)),
	READINGS(150, false, row -> row.job().flatMap(KeyJob::lastRound).map(KeyColumn::readings).orElse(""),
			Comparator.comparing(row -> readingCount(row))),
	HEIGHT(108, true, split(ProfileSplit::height), lengths(row -> row.split().map(ProfileSplit::height))),
	TILT(92, true, split(split -> split.tilt().fromTightToOpen()), harmonic(ProfileSplit::tilt)),
	SADDLE(112, true, split(split -> split.saddle().fromTightToOpen()), harmonic(ProfileSplit::saddle)),
	SHIMS(140, false, row -> row.job().map(job -> Figures.shown(job.stack())).orElse(""), lengths(KeyColumn::sum)),
	SUM(92, true, row -> Figures.shown(sum(row)), lengths(KeyColumn::sum)),
	BEFORE(112, true, row -> Figures.shown(row.effect().map(RoundEffect::before)),
			lengths(row -> row.effect().map(RoundEffect::before))),
	AFTER(96, true, row -> Figures.shown(row.effect().flatMap(RoundEffect::after)),
			lengths(row -> row.effect().flatMap(RoundEffect::after))),
	FINDINGS(420, false, row -> String.join("; ", row.findings()),
			Comparator.comparing(row -> row.findings().size()));

	/** Columns of words, and of cups, whose heading says millimetres. */
	private static final Set<KeyColumn> UNITLESS = EnumSet.of(KEY, STATE, CUP, FINDINGS);

	private final int width;
	private final boolean figure;
	private final Function<KeyRow, String> text;
	private final Comparator<KeyRow> order;

	KeyColumn(int width, boolean figure, Function<KeyRow, String> text, Comparator<KeyRow> order) {
		this.width = width;
		this.figure = figure;
		this.text = text;
		this.order = order;
	}

	private static Function<KeyRow, String> split(Function<ProfileSplit, Length> part) {
		return row -> Figures.shown(row.split().map(part));
	}

	/** What is not known comes last. */
	private static Comparator<KeyRow> lengths(Function<KeyRow, Optional<Length>> length) {
		return Comparator.comparing((KeyRow row) -> length.apply(row).orElse(new Length(Long.MAX_VALUE)));
	}

	private static Comparator<KeyRow> harmonic(Function<ProfileSplit, Harmonic> part) {
		return lengths(row -> row.split().map(part).map(Harmonic::fromTightToOpen));
	}

	private static Optional<Length> sum(KeyRow row) {
		return row.job().filter(job -> !job.stack().isEmpty()).map(KeyJob::stackSum);
	}

	private static int readingCount(KeyRow row) {
		return row.job().flatMap(KeyJob::lastRound).map(round -> round.getReadings().size()).orElse(0);
	}

	private static String readings(Round round) {
		return RowEdit.readings(round).stream().map(reading -> reading.map(Figures::shown).orElse("."))
				.collect(Collectors.joining(" "));
	}

	/** How wide it is at first, in points. */
	public int width() {
		return width;
	}

	/** Whether its texts are numbers, that stand to the right. */
	public boolean isFigure() {
		return figure;
	}

	/** Whether its cells can be typed into. */
	public boolean isEditable() {
		return this == READINGS || this == SHIMS;
	}

	/** With the unit of its figures, as it is shown now. */
	public String heading() {
		String words = Messages.of("table." + name().toLowerCase(Locale.ROOT));
		return UNITLESS.contains(this) ? words : words + " " + Figures.unit();
	}

	public String text(KeyRow row) {
		return text.apply(row);
	}

	Comparator<KeyRow> order() {
		return order;
	}

	/** The mark that stands before its text, if any. */
	public Optional<KeyState> mark(KeyRow row) {
		return this == STATE ? Optional.of(row.state()) : Optional.empty();
	}
}
