package padwright.workbench.papers;

import padwright.paper.card.BenchCard;
import padwright.paper.card.BenchCardPages;
import padwright.paper.film.FilmSheet;
import padwright.paper.film.FilmSheetPages;
import padwright.paper.handback.HandBack;
import padwright.paper.handback.HandBackPages;
import padwright.paper.page.PaperSize;
import padwright.paper.plan.PlanBenchCard;
import padwright.paper.plan.PlanFilmSheet;
import padwright.paper.plan.PlanHandBack;
import padwright.paper.plan.PlanQuoteSheet;
import padwright.paper.quote.QuotePages;
import padwright.paper.quote.QuoteSheet;
import padwright.workbench.Messages;
import padwright.workbench.reports.QuoteTerms;
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
	};

	private final String fileEnd;

	PaperKind(String fileEnd) {
		this.fileEnd = fileEnd;
	}

	/** Draws the paper, for a quote with what it charges besides parts; throws what the drawing of its kind throws where the plan cannot be drawn. */
	Pages draw(PlanSolution solution, PaperSize size, QuoteTerms terms) {
		String plan = solution.plan().plan().getName();
		return draw(solution, size, (plan == null ? Messages.get("papers.plan") : plan) + "-" + fileEnd, terms);
	}

	abstract Pages draw(PlanSolution solution, PaperSize size, String name, QuoteTerms terms);
}
