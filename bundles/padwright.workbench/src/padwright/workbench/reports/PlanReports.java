package padwright.workbench.reports;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.BiFunction;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.xtext.resource.XtextResource;

import padwright.engine.drift.Climate;
import padwright.engine.leak.Air;
import padwright.engine.leak.Tester;
import padwright.language.ide.server.LocalServer;
import padwright.model.Resolved;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.model.stock.Stock;
import padwright.workbench.Messages;
import padwright.workbench.questions.QuoteTerms;
import padwright.workbench.session.Answers;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.RowProgress;
import padwright.workup.choose.PadChoice;
import padwright.workup.compare.ComparisonReport;
import padwright.workup.compare.PlanComparison;
import padwright.workup.diagnosis.PlanDiagnosis;
import padwright.workup.drift.PlanDrift;
import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.inspection.RecommendedWork;
import padwright.workup.harm.PlanHarm;
import padwright.workup.leak.PlanLeak;
import padwright.workup.parts.PlanQuote;
import padwright.workup.report.ChoiceReport;
import padwright.workup.report.DiagnosisReport;
import padwright.workup.report.DriftReport;
import padwright.workup.report.HarmReport;
import padwright.workup.report.LeakReport;
import padwright.workup.report.QuoteReport;
import padwright.workup.report.Report;
import padwright.workup.report.ReportExtension;
import padwright.workup.report.SoundReport;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;
import padwright.workup.sound.SystemSound;

/** The reports about one plan. */
final class PlanReports {

	private static final double PASCALS = 1000;
	private static final BigDecimal USUAL_CELSIUS = BigDecimal.valueOf(20);

	private PlanReports() {
	}

	static ReportMaker choose(Path file) {
		return of(file, (plan, monitor) -> ChoiceReport.of(
				PadChoice.of(plan).filter(choice -> plan.stock().filter(stock -> !stock.getPads().isEmpty()).isPresent())
						.orElseThrow(() -> new IllegalArgumentException(Messages.get("report.noStock"))),
				RecommendedWork.of(plan)));
	}

	static ReportMaker leak(Path file) {
		return of(file, (plan, monitor) -> {
			BigDecimal celsius = plan.stock().map(Stock::getClimate).map(climate -> climate.getTemperature())
					.orElse(USUAL_CELSIUS);
			return LeakReport.of(PlanLeak.of(solve(plan, monitor), new Tester(PASCALS, Air.at(celsius.doubleValue()))),
					celsius);
		});
	}

	static ReportMaker drift(Path file) {
		return of(file, (plan, monitor) -> DriftReport.of(PlanDrift.of(plan,
				climate(PlanDrift.bench(plan), "report.noBench"), climate(PlanDrift.home(plan), "report.noHome"))));
	}

	private static Climate climate(Optional<Climate> said, String missing) {
		return said.orElseThrow(() -> new IllegalArgumentException(Messages.get(missing)));
	}

	static ReportMaker quote(Path file, QuoteTerms terms) {
		return of(file, (plan, monitor) -> QuoteReport.of(plan.plan().getName(),
				PlanQuote.of(solve(plan, monitor), terms.labour(), terms.taxPercent())));
	}

	/** @throws IllegalArgumentException when it is made, for a note that the system does not know */
	static ReportMaker diagnose(Path file, List<String> bad, List<String> good) {
		return of(file, (plan, monitor) -> DiagnosisReport.of(PlanDiagnosis.of(plan, bad, good)));
	}

	/**
	 * Of the system of a plan, or of the first one in a file of systems.
	 *
	 * @throws IllegalArgumentException when it is made, if a size is missing
	 */
	static ReportMaker sound(Path file) {
		return monitor -> new Made(SoundReport.of(sounding(system(file)), true), Map.of(Made.OWN, file));
	}

	/** @throws IllegalArgumentException when it is made, if the plan names no system, or that lacks a size */
	static ReportMaker harm(Path file) {
		return of(file, (plan, monitor) -> HarmReport.byPads(PlanHarm.of(plan,
				sounding(Resolved.of(plan.plan().getSystem()).orElseThrow(
						() -> new IllegalArgumentException(Messages.get("report.noSystem", plan.plan().getName())))))));
	}

	/** @throws java.util.NoSuchElementException when it is made, if no extension adds a report of this name */
	static ReportMaker added(String name, Path file) {
		return of(file, (plan, monitor) -> {
			Added<ReportExtension> added = Optional
					.ofNullable(Extensions.installed().byName(ReportExtension.class).get(name)).orElseThrow();
			return Extensions.installed()
					.answer(added, IllegalArgumentException.class, () -> added.thing().report(plan))
					.orElseThrow(() -> new IllegalArgumentException(Messages.get("extensions.failed")));
		});
	}

	private static SystemSound sounding(KeySystem system) {
		SystemSound sound = SystemSound.of(system);
		sound.missing().stream().findFirst().ifPresent(size -> {
			throw new IllegalArgumentException(size.advice().inOneLine());
		});
		return sound;
	}

	private static KeySystem system(Path file) {
		Optional<KeySystem> first = document(file).map(Document::getSystems).flatMap(all -> all.stream().findFirst());
		return first.or(() -> Resolved.of(plan(file).plan().getSystem())).orElseThrow(
				() -> new IllegalArgumentException(Messages.get("report.noPlan", file.getFileName())));
	}

	static ReportMaker compare(Path earlier, Path later) {
		return monitor -> new Made(ComparisonReport.of(PlanComparison.of(solve(plan(earlier), monitor),
				solve(plan(later), monitor))), Map.of(Made.OWN, later));
	}

	private static ReportMaker of(Path file, BiFunction<ServicePlan, IProgressMonitor, Report> report) {
		return monitor -> new Made(report.apply(plan(file), monitor), Map.of(Made.OWN, file));
	}

	private static PlanSolution solve(ServicePlan plan, IProgressMonitor monitor) {
		return PlanSolver.solve(plan, WrittenAnswers.KEEP, new RowProgress(monitor));
	}

	/** The first plan of a document as its text is now. */
	private static ServicePlan plan(Path file) {
		return document(file).map(Document::getPlans).flatMap(plans -> plans.stream().findFirst()).map(ServicePlan::new)
				.orElseThrow(() -> new IllegalArgumentException(Messages.get("report.noPlan", file.getFileName())));
	}

	/** As its text is now; nothing for an empty file. */
	private static Optional<Document> document(Path file) {
		LocalServer server = LanguageSession.get().running()
				.orElseThrow(() -> new IllegalArgumentException(Messages.get("format.notYet")));
		return read(server, file).getContents().stream().filter(Document.class::isInstance).map(Document.class::cast)
				.findFirst();
	}

	/** A change while it is being read cancels the reading, which is then begun again. */
	private static XtextResource read(LocalServer server, Path file) {
		try {
			return Answers.retried(() -> server.snapshot(LocalServer.uri(file))).get();
		} catch (InterruptedException interrupted) {
			Thread.currentThread().interrupt();
			throw new OperationCanceledException();
		} catch (ExecutionException | CancellationException changedEachTime) {
			throw new IllegalArgumentException(Messages.get("report.changing"), changedEachTime);
		}
	}
}
