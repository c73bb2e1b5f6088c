package padwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.exchange.tree.ExchangeException;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Document;

/** A document that went through another format is the same document. */
class RoundTripTest {

	private static final String WITH_ERRORS = "student-flute.plan";
	private static final Exchange EXCHANGE = ExampleDocuments.LANGUAGE.getInstance(Exchange.class);

	/** Compares links by the things they lead to in shops that are equal but not the same. */
	private static final class BesideLinks extends EcoreUtil.EqualityHelper {

		private static final long serialVersionUID = 1;

		@Override
		protected boolean haveEqualReference(EObject expected, EObject actual, EReference reference) {
			return reference.isContainment() ? super.haveEqualReference(expected, actual, reference)
					: targets(expected.eGet(reference)).equals(targets(actual.eGet(reference)));
		}

		private static List<String> targets(Object value) {
			List<?> targets = value instanceof List<?> many ? many : value == null ? List.of() : List.of(value);
			return targets.stream().map(target -> path((EObject) target)).toList();
		}

		private static String path(EObject target) {
			String container = target.eContainer() instanceof Titled owner ? path(owner) : "";
			return target.eIsProxy() ? "nowhere" : container + "/" + ((Titled) target).getName();
		}
	}

	static Stream<Arguments> documentsAndFormats() {
		return ExampleDocuments.names().stream()
				.flatMap(name -> Stream.of(Format.values()).map(format -> Arguments.of(name, format)))
				.filter(pair -> !List.of(pair.get()).equals(List.of(WITH_ERRORS, Format.XMI)));
	}

	@ParameterizedTest
	@MethodSource("documentsAndFormats")
	void textAndBackIsTheSame(String name, Format format) throws ExchangeException {
		Document original = ExampleDocuments.document(name);
		String content = EXCHANGE.write(original, format);
		Imported imported = EXCHANGE.read(content, format);
		Document back = ExampleDocuments.with(name, imported.text());
		assertTrue(new BesideLinks().equals(original, back), imported.text());
		assertEquals(content, EXCHANGE.write(back, format));
		assertEquals(name.substring(name.indexOf('.') + 1), imported.extension());
	}

	@Test
	void xmiHasNoWordsForLinksThatLeadNowhere() {
		Document document = ExampleDocuments.document(WITH_ERRORS);
		assertTrue(assertThrows(ExchangeException.class, () -> EXCHANGE.write(document, Format.XMI)).getMessage()
				.contains("nowhere"));
	}
}
