package padwright.workbench.papers;

import padwright.paper.card.BenchCard;
import padwright.paper.card.BenchCardPages;
import padwright.paper.film.FilmSheet;
import padwright.paper.film.FilmSheetPages;
import padwright.paper.handback.HandBack;
import padwright.paper.handback.HandBackPages;
import padwright.paper.money.MoneyPages;
import padwright.paper.money.MoneySheet;
import padwright.paper.page.HeadText;
import padwright.paper.page.PaperSize;
import padwright.paper.plan.PlanBenchCard;
import padwright.paper.plan.PlanEstimateSheet;
import padwright.paper.plan.PlanFilmSheet;
import padwright.paper.plan.PlanHandBack;
import padwright.paper.plan.PlanInvoiceSheet;
import padwright.paper.plan.PlanQuoteSheet;
import padwright.paper.quote.QuotePages;
import padwright.paper.quote.QuoteSheet;
import padwright.workbench.Messages;
import padwright.workbench.questions.QuoteTerms;
import padwright.workbench.session.StatusLine;
import padwright.workup.parts.PlanQuote;
import padwright.workup.solve.PlanSolution;

/** The papers that are drawn of a plan. */
enum PaperKind {

	CARD("bench-card") {
		@Override
		Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms) {
			BenchCard card = PlanBenchCard.of(solution);
			return new Pages(name, card.title(), new BenchCardPages(card, size).pages());
		}
	},
	FILM("film") {
		@Override
		Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms) {
			FilmSheet sheet = PlanFilmSheet.of(solution);
			return new Pages(name, sheet.title(), new FilmSheetPages(sheet, size).pages());
		}
	},
	HANDBACK("hand-back") {
		@Override
		Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms) {
			HandBack page = PlanHandBack.of(solution);
			tell(page.head());
			return new Pages(name, page.title(), new HandBackPages(page, size).pages());
		}
	},
	QUOTE("quote") {
		@Override
		Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms) {
			QuoteSheet sheet = PlanQuoteSheet.of(solution.plan(),
					PlanQuote.of(solution, terms.labour(), terms.taxPercent()));
			return new Pages(name, sheet.title(), new QuotePages(sheet, size).pages());
		}
	},
	ESTIMATE("estimate") {
		@Override
		Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms) {
			return money(PlanEstimateSheet.of(solution.plan()), size, name);
		}
	},
	INVOICE("invoice") {
		@Override
		Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms) {
			return money(PlanInvoiceSheet.of(solution.plan()), size, name);
		}
	};

	private final String fileEnd;

	PaperKind(String fileEnd) {
		this.fileEnd = fileEnd;
	}

	private static Pages money(MoneySheet sheet, PaperSize size, String name) {
		tell(sheet.head());
		return new Pages(name, sheet.title(), new MoneyPages(sheet, size).pages());
	}

	/** Tells of a logo that was left out. */
	private static void tell(HeadText head) {
		head.letterhead().trouble().ifPresent(words -> StatusLine.tell(words, true));
	}

	/** Draws the paper, for a quote with what it charges besides parts; throws what the drawing of its kind throws where the plan cannot be drawn. */
	Pages draw(PlanSolution solution, PaperSize size, QuoteTerms terms) {
		String plan = solution.plan().plan().getName();
		return draw(solution, size, (plan == null ? Messages.get("papers.plan") : plan) + "-" + fileEnd, terms);
	}

	abstract Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms);
}
