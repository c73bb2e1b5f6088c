package padwright.workup.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

import org.junit.jupiter.api.Test;

class IssueCodesTest {

	private static List<String> codes() throws IllegalAccessException {
		List<String> codes = new ArrayList<>();
		for (Field constant : IssueCodes.class.getFields()) {
			codes.add((String) constant.get(null));
		}
		return codes;
	}

	@Test
	void codesAreUnique() throws IllegalAccessException {
		assertEquals(codes().size(), new HashSet<>(codes()).size(), codes().toString());
	}

	@Test
	void codesAreWordsWithHyphens() throws IllegalAccessException {
		for (String code : codes()) {
			assertTrue(code.matches("[a-z]+(-[a-z]+)*"), code);
		}
	}
}
