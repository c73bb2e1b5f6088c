package example;

import java.util.stream.Collectors;

import padwright.exchange.DocumentFormat;
import padwright.exchange.Imported;
import padwright.exchange.tree.ExchangeException;
import padwright.model.plan.Document;

/** The names of the keys of every plan, one a line. */
public final class RowsFormat implements DocumentFormat {

	@Override
	public String name() {
		return "rows";
	}

	@Override
	public String title() {
		return "Rows of plans";
	}

	@Override
	public String write(Document document) throws ExchangeException {
		if (document.getPlans().isEmpty()) {
			throw new ExchangeException("it holds no plan");
		}
		return document.getPlans().stream().flatMap(plan -> plan.getKeys().stream())
				.map(row -> row.getKey().getName() + "\n").collect(Collectors.joining());
	}

	@Override
	public Imported read(String content) throws ExchangeException {
		throw new ExchangeException("this format is only written");
	}
}
