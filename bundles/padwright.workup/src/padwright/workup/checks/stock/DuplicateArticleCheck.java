package padwright.workup.checks.stock;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.model.stock.Stock;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** An article of one kind stands once in a stock. */
public final class DuplicateArticleCheck extends Check<Stock> {

	public DuplicateArticleCheck() {
		super(Stock.class);
	}

	private record Article(EClass kind, String name) {
	}

	@Override
	protected void check(Stock stock, Findings findings) {
		Set<Article> seen = new HashSet<>();
		for (EObject content : stock.eContents()) {
			if (content instanceof Titled article && article.getName() != null
					&& !seen.add(new Article(article.eClass(), article.getName()))) {
				findings.error(IssueCodes.DUPLICATE_ARTICLE,
						Place.of(article, KeySystemPackage.Literals.TITLED__NAME),
						Advice.of(IssueCodes.DUPLICATE_ARTICLE, article.getName()));
			}
		}
	}
}
