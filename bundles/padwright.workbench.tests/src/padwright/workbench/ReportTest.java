package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.jface.text.ITextSelection;
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
import padwright.workbench.reports.ReportView;

/** What the command line answers, asked for in the window; and papers. */
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
		driver.close();
	}

	@ParameterizedTest
	@CsvSource({"choose, plan, engineered pad", "leak, plan, mL/min", "quote, plan, engineered pad", "stock, shop, Main bench",
			"history, shop, A-1042"})
	void aReportIsShown(String command, String about, String words) throws Exception {
		run("padwright.workbench.report", Map.of("padwright.workbench.report.command", command,
				"padwright.workbench.report.about", about));
		ReportView view = (ReportView) Driver.view(ReportView.ID);
		Driver.waitFor("the answer of " + command, () -> view.text().contains(words));
	}

	@ParameterizedTest
	@CsvSource({"card", "film", "handback", "quote", "layout"})
	void aPaperIsShown(String kind) throws Exception {
		Driver.waitFor("the plan on the bench", () -> Bench
				.of(Driver.page().getWorkbenchWindow()).shown().plan().isPresent());
		run("padwright.workbench.paper", Map.of("padwright.workbench.paper.kind", kind));
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

	private static void run(String command, Map<String, String> parameters) throws Exception {
		Driver.ui(() -> {
			var known = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(command);
			return PlatformUI.getWorkbench().getService(IHandlerService.class)
					.executeCommand(ParameterizedCommand.generateCommand(known, parameters), null);
		});
	}
}
