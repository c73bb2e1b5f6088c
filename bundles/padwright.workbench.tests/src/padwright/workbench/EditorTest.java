package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.ICompletionProposalExtension2;
import org.eclipse.jface.text.link.LinkedModeModel;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.TextInvocationContext;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.editor.Completion;
import padwright.workbench.editor.Hover;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.editor.QuickAssist;

/** The text of a plan in the window: what is said of it while it is typed, and what is offered. */
class EditorTest {

	private static final String PLAN = "plans/first.plan";

	@TempDir
	private Path folder;
	private Driver bench;

	@BeforeEach
	void openShop() throws Exception {
		bench = Driver.withExampleShop(folder);
	}

	@AfterEach
	void closeShop() throws Exception {
		bench.close();
	}

	@Test
	void aBrokenNameIsFoundCuredAndBroughtBackInOneStep() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		String sound = Driver.text(editor);
		Driver.replace(editor, "with Bench", "with Bnech");
		Driver.waitFor("a finding", () -> bench.findings(PLAN).stream().anyMatch(found -> found.contains("Bnech")));
		Driver.waitFor("a cure", () -> cure("Bench").isPresent());
		String broken = Driver.text(editor);
		Driver.ui(() -> {
			cure("Bench").orElseThrow().run(bench.markers(PLAN).get(0));
			return null;
		});
		assertEquals(sound, Driver.text(editor));
		Driver.waitFor("no finding", () -> bench.findings(PLAN).stream().noneMatch(found -> found.contains("Bnech")));
		undo(editor);
		assertEquals(broken, Driver.text(editor));
	}

	/** A cure of the finding on the broken name itself; others that follow from it have cures of their own. */
	private Optional<IMarkerResolution> cure(String name) {
		return bench.markers(PLAN).stream()
				.filter(marker -> marker.getAttribute(IMarker.MESSAGE, "").contains("Bnech"))
				.flatMap(marker -> Arrays.stream(IDE.getMarkerHelpRegistry().getResolutions(marker)))
				.filter(cure -> cure.getLabel().contains(name)).findFirst();
	}

	private static void undo(PlanEditor editor) throws Exception {
		Driver.ui(() -> {
			editor.getAction(ITextEditorActionConstants.UNDO).run();
			return null;
		});
	}

	/** Wherever on the line the caret is, so that nobody has to hit the word. */
	@Test
	void curesAreOfferedAllAlongTheLine() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		Driver.replace(editor, "with Bench", "with Bnech");
		Driver.waitFor("a finding", () -> bench.findings(PLAN).stream().anyMatch(found -> found.contains("Bnech")));
		int line = Driver.text(editor).indexOf("plan ");
		Driver.waitFor("a cure at the start of the line", () -> Arrays.stream(new QuickAssist()
				.computeQuickAssistProposals(new TextInvocationContext((ISourceViewer) viewer(editor), line, 0)))
				.anyMatch(offer -> offer.getDisplayString().contains("Bench")));
	}

	@Test
	void wordsAreColouredByWhatTheyAre() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		Driver.waitFor("a bold name", () -> Arrays.stream(viewer(editor).getTextWidget().getStyleRanges())
				.anyMatch(range -> isOn(range, editor, "Bench")));
	}

	private static boolean isOn(StyleRange range, PlanEditor editor, String word) {
		String shown = viewer(editor).getTextWidget().getText();
		return range.foreground != null && shown.startsWith(word, range.start) && range.length == word.length();
	}

	private static ITextViewer viewer(PlanEditor editor) {
		return editor.getAdapter(ITextViewer.class);
	}

	@Test
	void completionKnowsTheKeysOfTheSystem() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		Driver.replace(editor, "\tkey F ", "\tkey \n\tkey F ");
		int offset = Driver.text(editor).indexOf("key \n\tkey F ") + "key ".length();
		Driver.waitFor("a key", () -> offers(editor, offset).map(ICompletionProposal::getDisplayString)
				.anyMatch(name -> name.startsWith("LowC") || name.startsWith("Ds")));
	}

	private static Stream<ICompletionProposal> offers(PlanEditor editor, int offset) {
		return Arrays.stream(new Completion().computeCompletionProposals(viewer(editor), offset));
	}

	@Test
	void aSnippetIsFilledInStopByStop() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		String before = Driver.text(editor);
		Driver.replace(editor, "\tregulate F", "\tkey\n\tregulate F");
		int offset = Driver.text(editor).indexOf("\tkey\n") + "\tkey".length();
		Driver.waitFor("a row", () -> row(editor, offset).isPresent());
		Point stop = Driver.ui(() -> {
			ICompletionProposal row = row(editor, offset).orElseThrow();
			((ICompletionProposalExtension2) row).apply(viewer(editor), '\0', 0, offset);
			return row.getSelection(Driver.document(editor));
		});
		String name = Driver.text(editor).substring(stop.x, stop.x + stop.y);
		assertTrue(Driver.text(editor).contains("\tkey " + name + " empty 15 15 15 15 15 15 15 15 felt . . . . . . . .\n"), name);
		assertFalse(before.contains("key " + name + " "), name);
		assertTrue(LinkedModeModel.hasInstalledModel(Driver.document(editor)));
		undo(editor);
		assertTrue(Driver.text(editor).contains("\tkey\n\tregulate F"));
	}

	private static Optional<ICompletionProposal> row(PlanEditor editor, int offset) {
		return offers(editor, offset).filter(offer -> offer.getDisplayString().startsWith("key with empty cup")).findFirst();
	}

	@Test
	void aHoverGivesTheNumbers() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		Driver.waitFor("an answer", () -> hover(editor, "key F").contains("cup"));
	}

	private static String hover(PlanEditor editor, String place) {
		int offset = Driver.document(editor).get().indexOf(place) + place.length() - 1;
		String info = new Hover().getHoverInfo(viewer(editor), new Region(offset, 0));
		return info == null ? "" : info;
	}

	@Test
	void savingKeepsTheOldTextBesideTheNewOneAndUndoGoesOn() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		String old = Driver.text(editor);
		Driver.replace(editor, "with Bench", "with  Bench");
		String anew = Driver.text(editor);
		Driver.ui(() -> {
			editor.doSave(new NullProgressMonitor());
			return null;
		});
		assertFalse(Driver.ui(editor::isDirty));
		assertEquals(anew, Files.readString(bench.path(PLAN)));
		assertEquals(old, Files.readString(bench.path(PLAN + ".bak")));
		undo(editor);
		assertEquals(old, Driver.text(editor));
		assertTrue(Driver.ui(editor::isDirty));
	}

	@Test
	void savedAsAnotherDocumentTheEditorGoesOnInThat() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		String old = Driver.text(editor);
		Driver.replace(editor, "with Bench", "with  Bench");
		String anew = Driver.text(editor);
		Driver.ui(() -> {
			editor.saveAs(bench.path("plans/another.plan"));
			return null;
		});
		assertEquals(anew, Files.readString(bench.path("plans/another.plan")));
		assertEquals(old, Files.readString(bench.path(PLAN)));
		assertEquals("another.plan", Driver.ui(editor::getTitle));
		assertEquals(anew, Driver.text(editor));
		assertFalse(Driver.ui(editor::isDirty));
	}

	@Test
	void aDocumentIsNotSavedWhereNoShopIsOpen() throws Exception {
		PlanEditor editor = bench.open(PLAN);
		Path elsewhere = folder.resolve("elsewhere.plan");
		Driver.display().asyncExec(() -> editor.saveAs(elsewhere));
		Driver.answerDialog("Save as another document", "OK");
		assertFalse(Files.exists(elsewhere));
		assertEquals("first.plan", Driver.ui(editor::getTitle));
	}
}
