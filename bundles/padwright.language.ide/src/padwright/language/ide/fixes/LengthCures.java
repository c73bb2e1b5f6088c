package padwright.language.ide.fixes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.language.ide.facts.Rows;
import padwright.language.ide.words.Messages;
import padwright.model.LengthText;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmStore;

/** Cures for lengths that cannot be meant, or are not in stock. */
final class LengthCures {

	/** A nanometre is the sixth decimal of a millimetre. */
	private static final int MOST_DECIMALS = 6;

	private LengthCures() {
	}

	/** Takes the unit that was probably meant, for one number or for its whole row. */
	static List<Fix> unit(Site site) {
		if (site.data().isEmpty()) {
			return List.of();
		}
		String meant = site.data().get(0);
		return NumberRow.of(site).map(row -> unit(site, row, Measure.valueOf(meant)))
				.orElseGet(() -> List.of(site.replace(Messages.of("fix.convert", meant), meant)));
	}

	private static List<Fix> unit(Site site, NumberRow row, Measure meant) {
		List<Fix> fixes = new ArrayList<>();
		LengthUnit unit = row.unit();
		Lengths.exact(meant.number(), meant.unit()).flatMap(length -> LengthText.number(length, unit))
				.ifPresent(number -> fixes.add(site.replace(
						Messages.of("fix.convertTo", meant, number, unit.symbol()), number)));
		fixes.add(Fix.of(Messages.of("fix.wholeRow", meant.unit().symbol()), row.withUnit(meant.unit())));
		return fixes;
	}

	/** Rounds a number to the most decimals with which it can be kept exactly. */
	static List<Fix> round(Site site) {
		String written = site.text().split("\\s", 2)[0];
		LengthUnit unit = unitOf(site);
		return IntStream.rangeClosed(0, MOST_DECIMALS).map(index -> MOST_DECIMALS - index)
				.mapToObj(decimals -> new BigDecimal(written).setScale(decimals, RoundingMode.HALF_EVEN))
				.filter(rounded -> Lengths.exact(rounded, unit).isPresent()).limit(1)
				.map(BigDecimal::toPlainString)
				.map(number -> site.replace(Messages.of("fix.round", number),
						number + site.text().substring(written.length())))
				.toList();
	}

	/** Takes the nearest thickness of the film in stock. */
	static List<Fix> film(Site site) {
		return Rows.around(site.element()).flatMap(job -> wanted(site).flatMap(wanted -> nearest(job, wanted)))
				.flatMap(film -> written(site, film).map(text -> use(site, film, text))).stream().toList();
	}

	private static Fix use(Site site, Object what, String text) {
		return site.replace(Messages.of("fix.use", what), text);
	}

	private static Optional<Length> wanted(Site site) {
		return Lengths.exact(Measure.valueOf(site.text()).number(), unitOf(site));
	}

	private static LengthUnit unitOf(Site site) {
		LengthUnit written = Measure.valueOf(site.text()).unit();
		return written != null ? written
				: NumberRow.of(site).map(NumberRow::unit).orElseGet(() -> Lengths.documentUnit(site.element()));
	}

	private static Optional<Length> nearest(KeyJob job, Length wanted) {
		return job.fitting().films().map(FilmStore::of).stream().flatMap(store -> store.thicknesses().stream())
				.min(Comparator.comparing((Length film) -> film.minus(wanted).abs())
						.thenComparing(Comparator.naturalOrder()));
	}

	private static Optional<String> written(Site site, Length length) {
		return NumberRow.of(site).map(row -> LengthText.number(length, row.unit()))
				.orElseGet(() -> Optional.of(LengthText.measure(length, site.element())));
	}

	/** Takes a feeler that the stock has: the next thinner or the next thicker one. */
	static List<Fix> leaf(Site site) {
		Optional<KeyJob> job = Rows.around(site.element());
		Optional<Length> wanted = wanted(site);
		if (job.isEmpty() || wanted.isEmpty()) {
			return List.of();
		}
		List<Length> leaves = job.get().plan().feelers();
		Optional<Length> thinner = leaves.stream().filter(wanted.get()::isLongerThan).max(Comparator.naturalOrder());
		Optional<Length> thicker = leaves.stream().filter(wanted.get()::isShorterThan).findFirst();
		return Stream.of(thinner, thicker).flatMap(Optional::stream)
				.flatMap(leaf -> written(site, leaf).map(text -> use(site, leaf, text)).stream()).toList();
	}

	/** Takes the full shims that bring the pad to height. */
	static List<Fix> stack(Site site) {
		if (site.data().isEmpty() || site.data().get(0).isEmpty()) {
			return List.of();
		}
		String stack = site.data().get(0);
		return List.of(use(site, stack, stack));
	}
}
