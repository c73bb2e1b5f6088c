package padwright.language.ide.fixes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.edit.TextEdit;
import padwright.language.ide.words.Messages;
import padwright.language.messages.Wording;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.workup.words.FormerWords;

/** Cures for words of earlier versions of the language, words that are no names, and names that nothing has. */
final class WordCures {

	/** What can be declared by its mere name, the word that does it, and what stands behind the name. */
	private static final Map<String, Declaration> DECLARED = Map.of(
			KeySystemPackage.Literals.TOUCH.getName(), new Declaration("touch", "", KeySystem.class),
			KeySystemPackage.Literals.JOINT.getName(), new Declaration("joint", "", KeySystem.class),
			StockPackage.Literals.PAD_KIND.getName(), new Declaration("kind", " { }", Stock.class));

	/** @param block that it stands in */
	private record Declaration(String word, String rest, Class<? extends EObject> block) {
	}

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
		List<Fix> nearest = NameCures.nearest(site);
		return Stream.concat(nearest.isEmpty() ? written(site).stream() : nearest.stream(), declared(site).stream()).toList();
	}

	private static Optional<Fix> declared(Site site) {
		return Optional.of(site.data()).filter(data -> data.size() > 1 && FormerWords.now(site.text()).isEmpty())
				.map(data -> DECLARED.get(data.get(1))).flatMap(declaration -> declared(site, declaration));
	}

	private static Optional<Fix> declared(Site site, Declaration declaration) {
		EObject block = site.nearest(declaration.block());
		if (block == null) {
			return Optional.empty();
		}
		INode row = NodeText.node(site.element());
		while (row.getSemanticElement().eContainer() != block) {
			row = row.getParent();
		}
		return Optional.of(Fix.of(Messages.of("fix.declare." + declaration.word(), site.text()), new TextEdit(row.getOffset(), 0,
				declaration.word() + " " + site.text() + declaration.rest() + "\n\t")));
	}
}
