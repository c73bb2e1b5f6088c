package padwright.language.systems;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.mechanism.SystemMechanism;

/** The tables of fingerings notice every coupling and every touch that a shipped system would lack. */
class TablesHoldEveryLinkTest {

	/** What moves or is moved; all of them lists. */
	private static final Set<String> LINKS = Set.of("closes", "opens", "holds", "touches");

	/** Of fingers that are only ever pressed along with another that does the same. */
	private static final List<String> DONE_TWICE = List.of("Clarinet RightRings touches R3", "Saxophone D closes Fs");

	static Set<String> systems() {
		return ShippedSystems.all().keySet();
	}

	@ParameterizedTest
	@MethodSource("systems")
	void whatIsTakenAwayIsNoticed(String name) {
		KeySystem system = read(name);
		String table = String.join("\n", ShippedSystems.lines(name + ".fingerings"));
		List<String> unnoticed = new ArrayList<>();
		for (EObject part : parts(system)) {
			part.eClass().getEAllReferences().stream().filter(link -> LINKS.contains(link.getName()))
					.forEach(link -> unnoticed.addAll(unnoticed(system, part, link, table)));
		}
		assertEquals(DONE_TWICE.stream().filter(link -> link.startsWith(name + " ")).toList(), unnoticed);
	}

	private static List<EObject> parts(KeySystem system) {
		List<EObject> parts = new ArrayList<>();
		system.eAllContents().forEachRemaining(parts::add);
		return parts;
	}

	private static List<String> unnoticed(KeySystem system, EObject part, EReference link, String table) {
		@SuppressWarnings("unchecked")
		EList<EObject> links = (EList<EObject>) part.eGet(link);
		List<String> unnoticed = new ArrayList<>();
		for (int index = 0; index < links.size(); index++) {
			EObject taken = links.get(index);
			links.remove(index);
			if (FingeringTablesTest.table(SystemMechanism.of(EffectiveSystem.of(system))).equals(table)) {
				unnoticed.add(String.join(" ", system.getName(), name(part), link.getName(), name(taken)));
			}
			links.add(index, taken);
		}
		return unnoticed;
	}

	private static String name(EObject named) {
		EObject told = named instanceof Coupling coupling ? coupling.getDriven()
				: named instanceof KeyChange change ? change.getKey() : named;
		return String.valueOf(told.eGet(told.eClass().getEStructuralFeature("name")));
	}

	private static KeySystem read(String name) {
		TestShop shop = new TestShop();
		List<String> files = Examples.documents(Examples.TEMPLATES).stream()
				.filter(file -> file.getParent().endsWith("systems")).map(file -> {
					shop.with(Examples.name(file), Examples.text(file));
					return Examples.name(file);
				}).toList();
		return files.stream().flatMap(file -> shop.document(file).getSystems().stream())
				.filter(system -> system.getName().equals(name)).findFirst().orElseThrow();
	}
}
