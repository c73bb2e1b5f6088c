package padwright.language.ide.fixes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.xtext.nodemodel.INode;

import padwright.language.edit.TextEdit;
import padwright.language.ide.facts.Rows;
import padwright.language.ide.words.Messages;
import padwright.model.Resolved;
import padwright.model.Range;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.Regulation;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.cautions.HazardStatements;
import padwright.workup.words.NearestName;

/** Cures for words that cannot be meant. */
final class NameCures {

	private NameCures() {
	}

	/** Takes the name that was probably meant. */
	static List<Fix> nearest(Site site) {
		return site.data().stream().limit(1).filter(name -> !name.isEmpty())
				.map(name -> change(site, name)).toList();
	}

	private static Fix change(Site site, String text) {
		return site.replace(Messages.of("fix.changeTo", text), text);
	}

	static List<Fix> hazard(Site site) {
		String nearest = NearestName.among(HazardStatements.codes(), site.text());
		return List.of(change(site, nearest));
	}

	/** A name can be or not be, but be no more or less. */
	static List<Fix> operator(Site site) {
		return Stream.of("is", "isnt").map(word -> change(site, word)).toList();
	}

	/** Puts the lesser number first. */
	static List<Fix> range(Site site) {
		Range range = Range.valueOf(site.text());
		Range turned = new Range(range.high(), range.low());
		return List.of(change(site, turned.toString()));
	}

	/** Takes away a word that says again what was said, with the blank before it. */
	static List<Fix> remove(Site site) {
		return List.of(Fix.of(Messages.of("fix.remove", site.text()),
				new TextEdit(site.offset() - 1, site.text().length() + 1, "")));
	}

	/** Names a key that is closed by the driver. */
	static List<Fix> coupled(Site site) {
		Regulation regulation = site.nearest(Regulation.class);
		return Optional.ofNullable(regulation).flatMap(found -> Resolved.of(found.getDriver()))
				.flatMap(driver -> Rows.plan(regulation).flatMap(plan -> plan.system().key(driver)))
				.map(EffectiveKey::closes).stream().flatMap(List::stream).map(Coupling::getDriven)
				.flatMap(driven -> Resolved.of(driven).stream()).map(Key::getName)
				.map(name -> change(site, name)).toList();
	}

	/** Alters the inherited key instead of defining it again. */
	static List<Fix> inherited(Site site) {
		if (!(site.element() instanceof Key key) || !isInherited(key)) {
			return List.of();
		}
		INode node = NodeText.node(key);
		TextEdit change = new TextEdit(node.getOffset(), "key".length(), "change");
		List<TextEdit> edits = NodeText.nodes(key, KeySystemPackage.Literals.TITLED__LABEL).stream()
				.map(NodeText::remove).toList();
		return List.of(new Fix(Messages.of("fix.changeInherited", key.getName()),
				Stream.concat(Stream.of(change), edits.stream()).toList()));
	}

	private static boolean isInherited(Key key) {
		return key.eContainer() instanceof KeySystem system && EffectiveSystem.lineage(system.getBase()).stream()
				.flatMap(base -> base.getKeys().stream()).anyMatch(other -> other.getName().equals(key.getName()));
	}
}
