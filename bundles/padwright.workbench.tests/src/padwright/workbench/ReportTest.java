package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.workbench.bench.Bench;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.reports.ReportView;

/** Reports and papers about what is in the window. */
class ReportTest {

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openPlan() throws Exception {
		driver = Driver.withExampleShop(folder);
		driver.open("plans/spring-service.plan");
	}

	@AfterEach
	void closeShop() throws Exception {
		Driver.ui(() -> {
			reports().forEach(Driver.page()::hideView);
			return null;
		});
		driver.close();
	}

	@ParameterizedTest
	@CsvSource({"choose, rigid-base pad", "leak, mL/min", "sound, A model of the air column",
			"harm, dB by note and pad",
			"next, from what the plans say", "drift, from the bench at", "stock, Main bench", "forecast, Materials past",
			"history, A-1042"})
	void aReportIsShown(String kind, String words) throws Exception {
		report(kind);
		Driver.waitFor("the report " + kind, () -> newest().text().contains(words));
	}

	@Test
	void aPadOfTheMapOfHarmLeadsToItsKey() throws Exception {
		PlanEditor editor = driver.open("plans/spring-service.plan");
		report("harm");
		Driver.waitFor("the map", () -> newest().text().contains("dB by note and pad"));
		Windows window = Windows.main();
		Driver.ui(() -> {
			Combo tables = window.all(Combo.class).stream().filter(each -> each.indexOf("dB by note and pad:") >= 0)
					.findFirst().orElseThrow();
			tables.select(tables.indexOf("dB by note and pad:"));
			tables.notifyListeners(SWT.Selection, new Event());
			Table map = window.all(Table.class).stream().filter(each -> each.getColumnCount() > 30).findFirst()
					.orElseThrow();
			Event entered = new Event();
			entered.item = map.getItem(0);
			map.notifyListeners(SWT.DefaultSelection, entered);
			return null;
		});
		Driver.waitFor("the key", () -> ((ITextSelection) editor.getSelectionProvider().getSelection()).getLength() > 0);
		ScreensTest.settle();
		ScreensTest.picture(Driver.ui(() -> Driver.page().getWorkbenchWindow().getShell()), "harm");
	}

	@Test
	void severalReportsAreOpenAtOnce() throws Exception {
		report("leak");
		report("drift");
		Driver.waitFor("both", () -> reports().stream().anyMatch(view -> view.text().contains("mL/min"))
				&& reports().stream().anyMatch(view -> view.text().contains("from the bench at")));
	}

	@Test
	void aReportIsOfTheTextThatIsNotSavedYet() throws Exception {
		Driver.replace(driver.open("plans/spring-service.plan"), "\tkey Tr2 empty 15 15 15 15 felt . . . .",
				"\tkey Tr2 empty 15 15 15 15 felt . 1.5 2 1.5");
		report("leak");
		Driver.waitFor("the worst key", () -> newest().text().contains("\n1\nD♯ trill\n"));
	}

	@Test
	void aQuoteAsksForTimeAndTax() throws Exception {
		Windows asked = Windows.open(command("padwright.workbench.report",
				Map.of("padwright.workbench.report.command", "quote")), "What it costs");
		asked.type("Minutes at the bench", "90");
		assertFalse(asked.canPush("OK"));
		asked.type("Money for an hour", "60");
		asked.type("Tax in per cent", "19");
		asked.push("OK");
		Driver.waitFor("the quote", () -> newest().text().contains("90 minutes at 60.00 an hour"));
	}

	@Test
	void allPlansAreSearchedBySerialPlayerAndFinding() throws Exception {
		Driver.waitFor("findings", () -> !driver.findings("plans/student-flute.plan").isEmpty());
		Windows asked = Windows.open(command("padwright.workbench.report",
				Map.of("padwright.workbench.report.command", "search")), "Search all plans");
		asked.type("Look for", "a-1042");
		asked.push("OK");
		Driver.waitFor("what was found", () -> newest().text().contains("SpringService"));
		assertFalse(Driver.ui(() -> newest().text().contains("StudentFlute")));
	}

	private static void report(String kind) throws Exception {
		int before = Driver.ui(() -> reports().size());
		run("padwright.workbench.report", Map.of("padwright.workbench.report.command", kind));
		Driver.waitFor("a view of its own", () -> reports().size() == before + 1);
	}

	private static List<ReportView> reports() {
		return Arrays.stream(Driver.page().getViewReferences()).map(view -> view.getView(false))
				.filter(ReportView.class::isInstance).map(ReportView.class::cast).toList();
	}

	private static ReportView newest() {
		return reports().stream().filter(Driver.page()::isPartVisible).findFirst().orElseThrow();
	}

	@ParameterizedTest
	@CsvSource({"card", "film", "layout"})
	void aPaperIsShown(String kind) throws Exception {
		Driver.waitFor("the plan on the bench", () -> Bench
				.of(Driver.page().getWorkbenchWindow()).shown().plan().isPresent());
		run("padwright.workbench.paper", Map.of("padwright.workbench.paper.kind", kind));
		Driver.waitFor("a paper", () -> Driver.page().getActiveEditor().getSite().getId().endsWith("pages"));
	}

	@Test
	void aHandBackIsShownOfWhatIsDone() throws Exception {
		driver.open("plans/whole-job.plan");
		Driver.waitFor("the plan on the bench", () -> Bench.of(Driver.page().getWorkbenchWindow()).shown().plan()
				.filter(plan -> plan.service().plan().getName().equals("WholeJob")).isPresent());
		run("padwright.workbench.paper", Map.of("padwright.workbench.paper.kind", "handback"));
		Driver.waitFor("a paper", () -> Driver.page().getActiveEditor().getSite().getId().endsWith("pages"));
	}

	@Test
	void aSystemIsMappedAndItsLayoutDrawnWithoutAPlan() throws Exception {
		var editor = driver.open("systems/piccolo.keys");
		Bench bench = Driver.ui(() -> Bench.of(Driver.page().getWorkbenchWindow()));
		Driver.waitFor("the system on the bench", () -> bench.shown().work()
				.filter(work -> work.map().title().equals("Piccolo")).isPresent());
		String key = bench.shown().work().orElseThrow().map().keys().get(2).name();
		Driver.ui(() -> {
			bench.choose(key);
			return null;
		});
		assertEquals(Optional.of(key), bench.shown().work().orElseThrow().keyAt(Driver.ui(() ->
				((ITextSelection) editor.getSelectionProvider().getSelection()).getOffset())));
		run("padwright.workbench.paper", Map.of("padwright.workbench.paper.kind", "layout"));
		Driver.waitFor("the sheet", () -> Driver.page().getActiveEditor().getTitle().contains("Piccolo"));
	}

	@Test
	void solvingThePlanWritesEveryAnswerInOneStep() throws Exception {
		var editor = driver.open("plans/spring-service.plan");
		String old = Driver.text(editor);
		Driver.waitFor("the plan on the bench", () -> Bench
				.of(Driver.page().getWorkbenchWindow()).shown().plan().isPresent());
		Driver.command("padwright.workbench.solvePlan");
		Driver.waitFor("the answers", () -> Driver.document(editor).get().contains(" stack "));
		Driver.ui(() -> {
			editor.getAction(ITextEditorActionConstants.UNDO).run();
			return null;
		});
		assertEquals(old, Driver.text(editor));
	}

	private static ParameterizedCommand command(String command, Map<String, String> parameters) {
		return ParameterizedCommand.generateCommand(
				PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(command), parameters);
	}

	/** Carries out a command of the window. */
	static void run(String command, Map<String, String> parameters) throws Exception {
		Driver.ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class)
				.executeCommand(command(command, parameters), null));
	}
}
