package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.edit.SolutionEdits;
import padwright.language.edit.TextEdit;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFolder;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

class SolveTest {

	private static final String PLAN = "plans/first.plan";
	private static final int SECOND_ROW = 6;

	@TempDir
	private Path folder;
	private TestShop shop;
	private Path plan;
	private Connection editor;

	@BeforeEach
	void openShop() throws Exception {
		shop = TestShop.example(folder);
		plan = shop.file(PLAN);
		editor = Connection.open(folder);
	}

	@AfterEach
	void close() throws Exception {
		editor.close();
	}

	@Test
	void lensAboveARowSolvesItAsTheCommandLineWould() throws Exception {
		List<? extends CodeLens> lenses = editor.get(editor.server().getTextDocumentService()
				.codeLens(new CodeLensParams(Connection.document(plan))));
		assertEquals(List.of(5, 6, 7), lenses.stream().map(lens -> lens.getRange().getStart().getLine()).toList());
		assertEquals(solvedOnTheCommandLine(1), textAfter(lenses.get(1).getCommand()));
	}

	@Test
	void actionInARowSolvesIt() throws Exception {
		CodeAction solve = offered(new Position(SECOND_ROW, 6)).get(0);
		assertEquals("Solve key F", solve.getTitle());
		assertEquals(solvedOnTheCommandLine(1), textAfter(solve.getCommand()));
	}

	@Test
	void rowsOfAllOtherKeysCanBeAdded() throws Exception {
		CodeAction add = offered(new Position(1, 2)).get(0);
		String text = shop.text(PLAN);
		String added = Texts.apply(Texts.of(add.getEdit(), Connection.uri(plan)), text);
		assertTrue(added.contains("0.5 .\n\tkey Tr2\n\tkey Tr1\n"), added);
		assertEquals(17, added.lines().filter(line -> line.startsWith("\tkey ")).count());
		editor.type(plan, added);
		assertEquals(List.of(), editor.client().diagnostics(Connection.uri(plan), List::isEmpty));
	}

	@Test
	void anEstimateIsDraftedFromWhatWasFoundOnce() throws Exception {
		String title = "Draft an estimate from what was found";
		assertTrue(offered(new Position(1, 2)).stream().noneMatch(action -> action.getTitle().equals(title)), "nothing was found");
		String found = shop.text(PLAN).replace("key Fs empty", "key Fs found torn empty");
		editor.type(plan, found);
		CodeAction draft = offered(new Position(1, 2)).stream().filter(action -> action.getTitle().equals(title)).findFirst()
				.orElseThrow();
		String drafted = Texts.apply(Texts.of(draft.getEdit(), Connection.uri(plan)), found);
		assertTrue(drafted.contains("option needed \"what is needed\" {\n\t\t\t\titem \"rigid-base pad\" 14.00\n"), drafted);
		assertTrue(drafted.contains("option all \"all pads new\" {\n\t\t\t\titem \"rigid-base pad\" 14.00 times 16\n"), drafted);
		editor.type(plan, drafted);
		assertTrue(offered(new Position(1, 2)).stream().noneMatch(action -> action.getTitle().equals(title)), "it is there");
	}

	private List<CodeAction> offered(Position position) throws Exception {
		CodeActionContext context = new CodeActionContext(List.of(), List.of(CodeActionKind.Refactor));
		return editor.get(editor.server().getTextDocumentService().codeAction(
				new CodeActionParams(Connection.document(plan), new Range(position, position), context))).stream()
				.map(action -> action.getRight()).toList();
	}

	private String textAfter(Command command) throws Exception {
		editor.get(editor.server().getWorkspaceService()
				.executeCommand(new ExecuteCommandParams(command.getCommand(), command.getArguments())));
		return Texts.apply(Texts.of(editor.client().applied(), Connection.uri(plan)), shop.text(PLAN));
	}

	private String solvedOnTheCommandLine(int row) throws Exception {
		Shop commandLine = Shop.open(PadwrightStandaloneSetup.doSetup(), ShopFolder.documents(folder));
		PlanSolution solution = PlanSolver.solve(
				new ServicePlan(commandLine.document(plan).orElseThrow().getPlans().get(0)), WrittenAnswers.KEEP,
				job -> {
				});
		return TextEdit.apply(SolutionEdits.of(
				new PlanSolution(solution.plan(), List.of(solution.keys().get(row))), WrittenAnswers.KEEP),
				shop.text(PLAN));
	}
}
