package padwright.language.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;

import org.eclipse.xtext.validation.Check;
import org.junit.jupiter.api.Test;

import padwright.model.plan.Document;

class WholeDocumentsTest {

	/** One that began elsewhere would never be asked; several would be carried out in an order left to chance. */
	@Test
	void theOneCheckOfTheValidatorBeginsAtADocument() {
		List<Method> checks = Arrays.stream(PadwrightValidator.class.getMethods())
				.filter(method -> method.isAnnotationPresent(Check.class)).toList();
		assertEquals(1, checks.size());
		checks.forEach(check -> assertEquals(List.of(Document.class), List.of(check.getParameterTypes())));
	}
}
