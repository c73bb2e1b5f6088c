package padwright.language.ide.fixes;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.edit.TextEdit;
import padwright.language.ide.words.Messages;
import padwright.language.messages.Wording;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.workup.words.FormerWords;

/** Cures for words of earlier versions of the language, words that are no names, and names that nothing has. */
final class WordCures {

	/** What can be declared in a system by its mere name, and the word that does it. */
	private static final List<String> DECLARED = List.of(KeySystemPackage.Literals.TOUCH.getName(),
			KeySystemPackage.Literals.JOINT.getName());

	private WordCures() {
	}

	/** Writes a word as it is written now, or as a name. */
	static List<Fix> written(Site site) {
		String word = site.text().strip().split("\\s", 2)[0];
		return FormerWords.now(word).or(() -> Wording.asName(wordBefore(site), word))
				.map(right -> Fix.of(Messages.of("fix.write", right), new TextEdit(site.offset(), word.length(), right)))
				.stream().toList();
	}

	private static String wordBefore(Site site) {
		String before = NodeModelUtils.getNode(site.element()).getRootNode().getText().substring(0, site.offset()).strip();
		return before.substring(before.length() - lettersAtEnd(before));
	}

	private static int lettersAtEnd(String text) {
		int letters = 0;
		while (letters < text.length() && Character.isLetter(text.charAt(text.length() - 1 - letters))) {
			letters++;
		}
		return letters;
	}

	/** Takes the name that was probably meant, or declares what is named. */
	static List<Fix> named(Site site) {
		return Stream.concat(NameCures.nearest(site).stream(), declared(site).stream()).toList();
	}

	private static Optional<Fix> declared(Site site) {
		KeySystem system = site.nearest(KeySystem.class);
		if (system == null || site.data().size() < 2 || !DECLARED.contains(site.data().get(1))) {
			return Optional.empty();
		}
		String word = site.data().get(1).toLowerCase(Locale.ROOT);
		INode row = NodeText.node(site.element());
		while (row.getSemanticElement().eContainer() != system) {
			row = row.getParent();
		}
		return Optional.of(Fix.of(Messages.of("fix.declare." + word, site.text()),
				new TextEdit(row.getOffset(), 0, word + " " + site.text() + "\n\t")));
	}
}
