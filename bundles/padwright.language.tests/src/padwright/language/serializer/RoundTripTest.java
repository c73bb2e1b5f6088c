package padwright.language.serializer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static padwright.language.EqualModels.assertEqualModels;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.resource.SaveOptions;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.serializer.ISerializer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.model.Resolved;
import padwright.model.plan.Document;

/** A model written as text and read again is the same model. */
class RoundTripTest {

	private static final int MODELS = 150;
	private static final ISerializer SERIALIZER = TestShop.LANGUAGE.getInstance(ISerializer.class);

	static List<Path> examples() {
		return Examples.documents();
	}

	@ParameterizedTest
	@MethodSource("examples")
	void examplesAsRead(Path file) {
		String name = Examples.name(file);
		Document document = Examples.with(file, Examples.text(file)).document(name);
		assertEqualModels(document, Examples.with(file, SERIALIZER.serialize(document)).document(name));
	}

	/**
	 * A copy has no text of its own to fall back on, so that all of it is really written; rows for keys that do not
	 * exist are left out, since nothing but the text knows their names.
	 */
	@ParameterizedTest
	@MethodSource("examples")
	void examplesWithoutTheirText(Path file) {
		String name = Examples.name(file);
		TestShop shop = Examples.with(file, Examples.text(file));
		Document copy = EcoreUtil.copy(shop.document(name));
		copy.getPlans().forEach(plan -> plan.getKeys().removeIf(row -> Resolved.of(row.getKey()).isEmpty()));
		replaceContent(shop.resource(name), copy);
		assertEqualModels(copy, Examples.with(file, SERIALIZER.serialize(copy)).document(name));
		assertEqualModels(copy, Examples.with(file, laidOut(copy)).document(name));
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void modelsBuiltInCode(long seed) {
		Document model = new RandomModels(seed, new HashSet<>()).document();
		replaceContent(TestShop.of("built.plan", "").resource("built.plan"), model);
		assertReadsTheSame(model, SERIALIZER.serialize(model));
		assertReadsTheSame(model, laidOut(model));
	}

	static LongStream seeds() {
		return LongStream.range(0, MODELS);
	}

	private static void replaceContent(XtextResource resource, Document document) {
		resource.getContents().clear();
		resource.getContents().add(document);
	}

	private static String laidOut(Document model) {
		return SERIALIZER.serialize(model, SaveOptions.newBuilder().format().getOptions());
	}

	private static void assertReadsTheSame(Document model, String text) {
		TestShop shop = TestShop.of("read.plan", text);
		assertEquals(List.of(), shop.resource("read.plan").getErrors(), text);
		assertEqualModels(model, shop.document("read.plan"));
	}

	@Test
	void theModelsBuiltInCodeHaveEveryFeature() {
		Set<EStructuralFeature> used = new HashSet<>();
		LongStream.range(0, 4 * MODELS).forEach(seed -> new RandomModels(seed, used).document());
		Set<EStructuralFeature> unused = new HashSet<>(RandomModels.allFeatures());
		unused.removeAll(used);
		assertEquals(Set.of(), unused);
	}
}
