package padwright.workbench.reports;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IProgressMonitor;

import padwright.language.edit.WrittenText;
import padwright.workbench.Messages;
import padwright.workbench.session.RowProgress;
import padwright.workup.forecast.ShopForecast;
import padwright.workup.history.ShopHistory;
import padwright.workup.job.PlanLines;
import padwright.workup.next.NextSteps;
import padwright.workup.parts.StockDraw;
import padwright.workup.report.ForecastReport;
import padwright.workup.report.HistoryReport;
import padwright.workup.report.MoneyReport;
import padwright.workup.report.NextReport;
import padwright.workup.report.Report;
import padwright.workup.report.SearchReport;
import padwright.workup.report.StockReport;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** The reports about all plans of a shop. */
final class ShopReports {

	private ShopReports() {
	}

	static ReportMaker stock(Path shop) {
		return of(shop, (plans, monitor) -> {
			List<StockDraw> draws = StockDraw.of(services(plans).stream().map(plan -> PlanSolver.solve(plan,
					WrittenAnswers.KEEP, new RowProgress(monitor))).toList());
			if (draws.isEmpty()) {
				throw new IllegalArgumentException(Messages.get("report.noStock"));
			}
			return StockReport.of(draws);
		});
	}

	static ReportMaker forecast(Path shop) {
		return of(shop, (plans, monitor) -> ForecastReport.of(ShopForecast.of(services(plans), LocalDate.now())));
	}

	static ReportMaker history(Path shop) {
		return of(shop, (plans, monitor) -> HistoryReport.of(ShopHistory.of(services(plans), LocalDate.now())));
	}

	static ReportMaker next(Path shop) {
		return of(shop, (plans, monitor) -> NextReport.of(NextSteps.of(services(plans), LocalDate.now())));
	}

	static ReportMaker money(Path shop) {
		return of(shop, (plans, monitor) -> MoneyReport.of(services(plans)));
	}

	static ReportMaker search(Path shop, String sought) {
		return of(shop, (plans, monitor) -> SearchReport.of(plans.stream()
				.map(plan -> new SearchReport.Searched(plan.plan(), lines(plan))).toList(), sought));
	}

	/** Its findings, and what it says of its instrument. */
	private static List<PlanLines.Line> lines(ShopPlan plan) {
		return Stream.concat(plan.findings().stream().map(finding -> new PlanLines.Line(finding, "")),
				PlanLines.of(new ServicePlan(plan.plan()), WrittenText::of).stream()).toList();
	}

	private static ReportMaker of(Path shop, BiFunction<List<ShopPlan>, IProgressMonitor, Report> report) {
		return monitor -> {
			List<ShopPlan> plans = ShopPlan.in(shop);
			if (plans.isEmpty()) {
				throw new IllegalArgumentException(Messages.get("report.noPlans", shop.getFileName()));
			}
			Map<String, Path> places = new LinkedHashMap<>();
			plans.forEach(plan -> Optional.ofNullable(plan.plan().getName())
					.ifPresent(name -> places.putIfAbsent(name, plan.file())));
			return new Made(report.apply(plans, monitor), places);
		};
	}

	private static List<ServicePlan> services(List<ShopPlan> plans) {
		return plans.stream().map(plan -> new ServicePlan(plan.plan())).toList();
	}
}
