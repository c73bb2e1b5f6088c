package padwright.language.systems;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.mechanism.SystemMechanism;

/** The instruments that ship as templates, by name, and the tables that they are held against. */
final class ShippedSystems {

	private static final Map<String, SystemMechanism> ALL = read();

	private ShippedSystems() {
	}

	static Map<String, SystemMechanism> all() {
		return ALL;
	}

	private static Map<String, SystemMechanism> read() {
		TestShop shop = new TestShop();
		List<String> names = Examples.documents(Examples.TEMPLATES).stream()
				.filter(file -> file.getParent().endsWith("systems"))
				.map(file -> {
					shop.with(Examples.name(file), Examples.text(file));
					return Examples.name(file);
				}).toList();
		Map<String, SystemMechanism> systems = new LinkedHashMap<>();
		names.forEach(name -> shop.document(name).getSystems().forEach(system -> systems.put(system.getName(),
				SystemMechanism.of(EffectiveSystem.of(system)))));
		return systems;
	}

	/** The lines of a table beside this class, without remarks. */
	static List<String> lines(String resource) {
		try (InputStream table = ShippedSystems.class.getResourceAsStream(resource)) {
			return new String(table.readAllBytes(), StandardCharsets.UTF_8).lines()
					.filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}
}
