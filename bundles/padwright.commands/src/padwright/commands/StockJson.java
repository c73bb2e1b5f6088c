package padwright.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.length.LengthUnit;
import padwright.model.stock.FilmSet;
import padwright.workup.parts.Article;
import padwright.workup.parts.ArticleWords;
import padwright.workup.parts.StockDraw;
import padwright.workup.parts.StockLine;

/** Stocks and what is drawn from them, for programs: thickness of film in thou, diameters in mm, money exact. */
final class StockJson {

	/** A nanometre is the sixth decimal of a millimetre. */
	private static final int EXACT_MILLIMETRES = 6;

	private StockJson() {
	}

	static Map<String, Object> of(List<StockDraw> draws) {
		return Map.of("stocks", draws.stream().map(StockJson::stock).toList());
	}

	private static Map<String, Object> stock(StockDraw draw) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("stock", draw.stock().getName());
		json.put("plans", draw.plans().stream().map(plan -> plan.plan().getName()).toList());
		json.put("articles", draw.lines().stream().map(StockJson::line).toList());
		json.put("reorderCost", draw.reorderCost());
		json.put("reorderUnpriced", draw.reorder().stream().filter(line -> line.cost().isEmpty())
				.map(line -> ArticleWords.of(line.article())).toList());
		return json;
	}

	private static Map<String, Object> line(StockLine line) {
		Map<String, Object> json = new LinkedHashMap<>(article(line.article()));
		line.onHand().ifPresent(count -> json.put("onHand", count));
		json.put("taken", line.noted());
		json.put("wouldTake", line.wanted());
		line.left().ifPresent(count -> json.put("left", count));
		json.put("short", line.shortage());
		line.article().price().ifPresent(price -> json.put("price", price));
		return json;
	}

	private static Map<String, Object> article(Article article) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("article", article.source().getName());
		json.put("label", ArticleWords.of(article));
		article.size().ifPresent(size -> {
			if (article.source() instanceof FilmSet) {
				json.put("thou", Json.thou(size));
			} else {
				json.put("mm", size.in(LengthUnit.MILLIMETRE, EXACT_MILLIMETRES));
			}
		});
		return json;
	}
}
