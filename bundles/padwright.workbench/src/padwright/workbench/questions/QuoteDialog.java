package padwright.workbench.questions;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Shell;

import padwright.engine.quote.Labour;
import padwright.workbench.Messages;
import padwright.workbench.prefs.Preferences;

/** Asks what a quote charges besides parts. */
public final class QuoteDialog extends Question<QuoteTerms> {

	private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

	private QuoteDialog(Shell shell) {
		super(shell, "quote");
	}

	/** Nothing where the user gave up. */
	public static Optional<QuoteTerms> ask(Shell shell) {
		return new QuoteDialog(shell).ask();
	}

	@Override
	protected List<String> fields() {
		return List.of("quote.minutes", "quote.rate", "quote.tax");
	}

	@Override
	protected List<String> last() {
		return List.of("", Preferences.remembered("quote.rate"), Preferences.remembered("quote.tax"));
	}

	@Override
	protected void keep(List<String> typed) {
		Preferences.remember("quote.rate", typed.get(1));
		Preferences.remember("quote.tax", typed.get(2));
	}

	@Override
	protected QuoteTerms answer(List<String> typed) {
		return terms(typed.get(0), typed.get(1), typed.get(2));
	}

	/**
	 * What was typed; no minutes for parts alone.
	 *
	 * @throws IllegalArgumentException in the user's words
	 */
	public static QuoteTerms terms(String minutes, String rate, String tax) {
		Labour labour = minutes.isEmpty() ? Labour.NONE : new Labour(number(minutes), number(rate));
		return new QuoteTerms(labour, tax.isEmpty() ? BigDecimal.ZERO : number(tax));
	}

	private static BigDecimal number(String typed) {
		try {
			BigDecimal number = new BigDecimal(typed.replace(',', '.'));
			if (number.signum() >= 0 && number.compareTo(MOST) <= 0) {
				return number;
			}
		} catch (NumberFormatException noNumber) {
			// As one that is too large.
		}
		throw new IllegalArgumentException(Messages.get("quote.noNumber", typed));
	}
}
