package padwright.workup.parts;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.keysystem.Titled;
import padwright.model.stock.Adhesive;
import padwright.model.stock.Assortment;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.model.stock.StockPackage;
import padwright.model.stock.StockedSize;
import padwright.workup.service.CupFit;
import padwright.workup.service.KeyJob;

/**
 * Something of the stock in one size, as it is counted and ordered.
 *
 * @param source a pad, a backing disc, a film set, or an adhesive, which is counted by the cups that it is used in
 * @param size diameter of a pad or backing disc, thickness of film; empty if it is cut to fit or not known
 */
public record Article(Titled source, Optional<Length> size) {

	private static final List<EClass> KINDS = List.of(StockPackage.Literals.PAD, StockPackage.Literals.BACKING,
			StockPackage.Literals.FILM_SET, StockPackage.Literals.ADHESIVE);

	/** Pads, then backing discs, then film, then glue; by name; smallest first. */
	static final Comparator<Article> ORDER = Comparator
			.comparing((Article article) -> KINDS.indexOf(article.source.eClass()))
			.thenComparing(article -> article.source.getName())
			.thenComparing(article -> article.size.orElse(Length.ZERO));

	/** The glue of a row. */
	public static Optional<Article> glue(KeyJob job) {
		return job.fitting().adhesive().map(glue -> new Article(glue, Optional.empty()));
	}

	/** One thickness of film. */
	public static Article film(FilmSet films, Length thickness) {
		return new Article(films, Optional.of(thickness));
	}

	/** The pad of a row in the diameter that goes into the cup; in that of the cup where none on hand does. */
	public static Optional<Article> pad(KeyJob job) {
		return job.fitting().pad().map(pad -> new Article(pad, diameter(job, pad.getDiameters())));
	}

	/** The backing disc of a row, likewise; without a size where the stock cuts it to fit. */
	public static Optional<Article> backing(KeyJob job) {
		return job.fitting().backing().map(disc -> new Article(disc,
				disc.getDiameters() == null ? Optional.empty() : diameter(job, disc.getDiameters())));
	}

	private static Optional<Length> diameter(KeyJob job, Assortment diameters) {
		Optional<Length> cup = job.key().flatMap(key -> key.cupDiameter());
		return diameters == null ? cup : cup.map(width -> CupFit.diameter(diameters, width)
				.flatMap(size -> Lengths.exact(size.getSize(), unit(diameters))).orElse(width));
	}

	/** How many the stock has, none of a size that it does not list; empty if it does not count them. */
	public Optional<Integer> onHand() {
		if (assortment() == null || size.isEmpty()) {
			return Optional.empty();
		}
		Optional<StockedSize> listed = listed();
		return listed.isEmpty() ? Optional.of(0)
				: listed.filter(StockedSize::isSetQuantity).map(StockedSize::getQuantity);
	}

	/** Whether the stock lists this size. */
	public boolean isListed() {
		return listed().isPresent();
	}

	private Optional<StockedSize> listed() {
		Assortment assortment = assortment();
		return assortment == null || size.isEmpty() ? Optional.empty() : assortment.getSizes().stream()
				.filter(each -> Lengths.exact(each.getSize(), unit(assortment)).equals(size)).findFirst();
	}

	/** Of one; empty if the stock does not say. */
	public Optional<BigDecimal> price() {
		return Optional.ofNullable(source instanceof Pad pad ? pad.getPrice()
				: source instanceof Backing disc ? disc.getPrice()
				: source instanceof Adhesive glue ? glue.getPrice() : ((FilmSet) source).getPrice());
	}

	/** The sizes on hand; null for glue, and for what is cut to fit. */
	private Assortment assortment() {
		return source instanceof Pad pad ? pad.getDiameters()
				: source instanceof Backing disc ? disc.getDiameters()
				: source instanceof FilmSet films ? films.getThicknesses() : null;
	}

	private static LengthUnit unit(Assortment assortment) {
		return Lengths.unit(assortment.getUnit(), assortment);
	}
}
