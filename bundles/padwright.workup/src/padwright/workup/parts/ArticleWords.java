package padwright.workup.parts;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.stock.Adhesive;
import padwright.model.stock.FilmSet;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;

/** Articles of a stock as they are ordered, in words. */
public final class ArticleWords {

	/** Of a diameter: as many as a stock is likely to write. */
	private static final int DECIMALS = 4;

	private ArticleWords() {
	}

	/** As in {@code rigid-base pad 17.5 mm}, {@code polyester film 0.5 thou}; film in the unit that is shown. */
	public static String of(Article article) {
		String name = Labels.of(article.source());
		return (article.source() instanceof Adhesive ? Messages.of("article.forCup", name) : name)
				+ article.size().map(size -> " " + size(article, size)).orElse("");
	}

	private static String size(Article article, Length size) {
		return article.source() instanceof FilmSet ? LengthWords.exact(size)
				: LengthWords.millimetres(size, DECIMALS) + " " + LengthUnit.MILLIMETRE.symbol();
	}
}
