package padwright.language.edit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

import com.google.inject.Injector;

import padwright.language.files.SafeFile;
import padwright.language.messages.Messages;
import padwright.language.shop.Shop;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.WrittenAnswers;

/** Writes answers and readings into the file of a plan. */
public final class PlanFile {

	/**
	 * What was written.
	 *
	 * @param changes how many places were changed
	 * @param backup where the old text is, if anything was written
	 */
	public record Written(int changes, Optional<Path> backup) {
	}

	private PlanFile() {
	}

	/**
	 * Notes {@code solution} in {@code file}, which it was made from.
	 *
	 * @throws IOException if the file was changed meanwhile or cannot be written; it is as it was then
	 */
	public static Written write(Injector language, Shop shop, Path file, PlanSolution solution,
			WrittenAnswers written) throws IOException {
		return write(language, shop, file, SolutionEdits.of(solution, written));
	}

	/**
	 * Applies {@code edits} to {@code file}, from whose text they were made.
	 *
	 * @throws IOException if the file was changed meanwhile, cannot be written, or could no longer be read; it is as it
	 *             was then
	 */
	public static Written write(Injector language, Shop shop, Path file, List<TextEdit> edits) throws IOException {
		String old = shop.text(file);
		String edited = TextEdit.apply(edits, old);
		if (edited.equals(old)) {
			return new Written(0, Optional.empty());
		}
		requireReadable(language, file, shop.resource(file), edited);
		Path backup = SafeFile.replace(file, old.getBytes(StandardCharsets.UTF_8),
				edited.getBytes(StandardCharsets.UTF_8));
		return new Written(edits.size(), Optional.of(backup));
	}

	/** The last guard before a file is replaced: what could be read must stay so. */
	private static void requireReadable(Injector language, Path file, XtextResource before, String edited)
			throws IOException {
		XtextResource after = (XtextResource) language.getInstance(XtextResourceSet.class)
				.createResource(URI.createFileURI(file.toAbsolutePath().toString()));
		after.load(new ByteArrayInputStream(edited.getBytes(StandardCharsets.UTF_8)),
				Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
		if (syntaxErrors(after) > syntaxErrors(before)) {
			throw new IOException(Messages.of("edit.unfit"));
		}
	}

	private static int syntaxErrors(XtextResource resource) {
		int errors = 0;
		for (var error : resource.getParseResult().getSyntaxErrors()) {
			errors += error.getSyntaxErrorMessage() == null ? 0 : 1;
		}
		return errors;
	}
}
