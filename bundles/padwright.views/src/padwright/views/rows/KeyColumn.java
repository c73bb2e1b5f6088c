package padwright.views.rows;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.model.FeelerReading;
import padwright.model.plan.Round;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.map.KeyState;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PadGap;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;
import padwright.workup.words.ShownUnit;

/** The columns of the table of keys. Lengths in thou, but cups in mm. */
public enum KeyColumn {

	KEY(84, false, KeyRow::label, Comparator.comparing(KeyRow::place)),
	READINGS(110, false, row -> row.job().flatMap(KeyJob::lastRound).map(KeyColumn::readings).orElse(""),
			Comparator.comparing(row -> readingCount(row))),
	LEVEL(66, true, row -> row.effect().map(effect -> Chance.of(effect.felt().chance())).orElse(""),
			chances(RoundEffect::felt)),
	AFTER(66, true, row -> row.effect().flatMap(RoundEffect::after).map(left -> Chance.of(left.chance())).orElse(""),
			chances(effect -> effect.after().orElse(null))),
	DONE(150, false, row -> row.job().flatMap(KeyJob::lastRound).map(NotedWork::of).orElse(""),
			Comparator.comparing(row -> row.job().flatMap(KeyJob::lastRound).map(NotedWork::of).orElse(""))),
	STATE(180, false, row -> row.state().inWords(), Comparator.comparing((KeyRow row) -> row.state())),
	GAP(190, false, row -> row.effect().map(effect -> gap(effect.felt())).orElse(""),
			lengths(row -> row.effect().map(effect -> widest(effect.felt())))),
	SHIMS(120, false, row -> row.job().map(job -> Figures.shown(job.stack())).orElse(""), lengths(KeyColumn::sum)),
	SUM(76, true, row -> Figures.shown(sum(row)), lengths(KeyColumn::sum)),
	CUP(96, true, row -> row.cup().map(Figures::millimetres).orElse(""), lengths(KeyRow::cup)),
	FINDINGS(420, false, row -> String.join("; ", row.findings()),
			Comparator.comparing(row -> row.findings().size()));

	/** Columns of words and chances, and of cups, whose heading says millimetres. */
	private static final Set<KeyColumn> UNITLESS = EnumSet.of(KEY, LEVEL, DONE, AFTER, STATE, CUP, FINDINGS);
	/** Columns whose texts are to be seen whole. */
	public static final Set<KeyColumn> WHOLE = EnumSet.of(READINGS, LEVEL, DONE, AFTER);

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

	/** The range at the hour where the gap is likely to be widest. */
	private static String gap(PadGap gap) {
		ClockHour hour = gap.widest();
		return Messages.of("table.gapAt", GapWords.range(gap.band(), hour), hour);
	}

	private static Length widest(PadGap gap) {
		return gap.band().mid().at(gap.widest());
	}

	/** The least likely first; what is not known comes last. */
	private static Comparator<KeyRow> chances(Function<RoundEffect, PadGap> gap) {
		return Comparator.comparing(row -> row.effect().map(gap).map(PadGap::chance).orElse(2.0));
	}

	/** What is not known comes last. */
	private static Comparator<KeyRow> lengths(Function<KeyRow, Optional<Length>> length) {
		return Comparator.comparing((KeyRow row) -> length.apply(row).orElse(new Length(Long.MAX_VALUE)));
	}

	private static Optional<Length> sum(KeyRow row) {
		return row.job().filter(job -> !job.stack().isEmpty()).map(KeyJob::stackSum);
	}

	private static int readingCount(KeyRow row) {
		return row.job().flatMap(KeyJob::lastRound).map(round -> round.getReadings().size()).orElse(0);
	}

	private static String readings(Round round) {
		return LeafReading.of(round).stream().map(reading -> reading.slides().map(Figures::shown)
				.orElseGet(() -> (reading.lightly() ? FeelerReading.DRAGS_LIGHTLY : FeelerReading.DRAGS).toString()))
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
		return UNITLESS.contains(this) ? words : words + " " + ShownUnit.symbol();
	}

	public String text(KeyRow row) {
		return text.apply(row);
	}

	Comparator<KeyRow> order() {
		return order;
	}

	/** The mark that stands before its text, if any. */
	public Optional<KeyState> mark(KeyRow row) {
		return this == KEY ? Optional.of(row.state()) : Optional.empty();
	}
}
