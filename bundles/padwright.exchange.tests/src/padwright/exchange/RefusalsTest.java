package padwright.exchange;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.exchange.tree.ExchangeException;

/** What cannot be taken over is refused at its line, with the cure. */
class RefusalsTest {

	private static final Exchange EXCHANGE = ExampleDocuments.LANGUAGE.getInstance(Exchange.class);

	@TempDir
	private Path folder;

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			2 | not JSON       | {\\n"format" "padwright/2" }
			2 | not JSON       | {@\\n
			1 | an object      | []
			1 | should begin   | {"plans": []}
			1 | should begin   | {"format": "padwright/3"}
			2 | its own touch  | {"format": "padwright/1", SYSTEM "keys": [{"name": "A",\\n"couplings": []}]}]}
			2 | said twice     | {"format": "padwright/1", STOCK "backings": [],\\n"stabilisers": []}]}
			2 | said twice     | {@, "unit": "mm",\\n"unit": "thou"}
			2 | out of place   | {@}\\n{}
			1 | leave the part | {@, "unit": null}
			3 | mean "systems" | {@,\\n\\n"system": []}
			2 | a list         | {@,\\n"systems": {}}
			2 | an object      | {@,\\n"systems": ["x"]}
			2 | in quotes      | {@, PLAN "keys": [{"key": "A", "empty": {"values":\\n[0.1]}}]}]}
			2 | exponent       | {@, PLAN "keys": [{"key": "A", "empty": {"values":\\n["1e999999999"]}}]}]}
			2 | one of hinge   | {@, SYSTEM "clock": {"hour": "12",\\n"reference": "moon"}}]}
			1 | is no length   | {@, PLAN "tolerance": "0.5 inch"}]}
			1 | is no hour      | {@, SYSTEM "clock": {"hour": "25", "reference": "head"}}]}
			1 | one of Either  | {@, STOCK "rules": [{"text": "t", "condition": {"left": {}}}]}]}
			2 | true or false  | {@, STOCK "materials": [{"name": "m",\\n"animal": "yes"}]}]}
			2 | whole number   | {@, STOCK "films": [{"name": "F", "material": "m", "thicknesses": {"sizes": [{\\n"quantity": 1.5}]}}]}]}
			1 | name of a      | {@, "plans": [{"name": "P", "system": 7}]}
			""")
	void json(int line, String why, String text) {
		String json = text.replace("\\n", "\n").replace("@", "\"format\": \"padwright/2\"")
				.replace("PLAN", "\"plans\": [{\"name\": \"P\", \"system\": \"S\",")
				.replace("SYSTEM", "\"systems\": [{\"name\": \"S\",").replace("STOCK", "\"stocks\": [{\"name\": \"S\",");
		assertRefused(line, why, json, Format.JSON);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			1 | is missing       | name,label\\nA,b
			1 | is empty         | ` `
			1 | two columns      | row,name,name\\nsystems,a,b
			2 | under 2 heads    | row,name\\nsystems,a,b
			2 | names no row     | row,name\\nsystems.keys,A
			3 | names no row     | row,name\\nsystems,S\\nplans.keys,A
			2 | no "colour"      | row,name,colour\\nsystems,S,red
			3 | is no length     | row,name,hole.diameter\\nsystems,S,\\nsystems.keys,A,wide
			2 | an object        | row,name,clock\\nsystems,S,12
			2 | filled already   | row,name,clock,clock.hour\\nsystems,S,x,12
			3 | exponent         | row,name,hole.diameter\\nsystems,S,\\nsystems.keys,A,1e9
			""")
	void csv(int line, String why, String text) {
		assertRefused(line, why, text.replace("\\n", "\n"), Format.CSV);
	}

	@Test
	void whatTheLanguageCannotSay() {
		assertTrue(refused("{\"format\": \"padwright/2\", \"plans\": [{\"name\": \"P\"}]}", Format.JSON).getMessage()
				.contains("system"));
		assertTrue(refused("{\"format\": \"padwright/2\", \"systems\": [{\"name\": \"a\\\" } system C {\"}]}", Format.JSON)
				.getMessage().contains("language"));
	}

	@Test
	void xmiOpensNothingButItself() throws IOException {
		Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
		String uri = secret.toUri().toString();
		assertRefused(1, "DOCTYPE", "<!DOCTYPE d [<!ENTITY x SYSTEM \"" + uri + "\">]>\n" + document("serial=\"&x;\"", ""),
				Format.XMI);
		assertRefused(0, "DOCTYPE", "<!DOCTYPE d SYSTEM \"" + uri + "\">\n" + document("", ""), Format.XMI);
		Path system = Files.writeString(folder.resolve("other.xmi"), EMPTY);
		assertRefused(3, "leads out of this file",
				document("", "\n<system href=\"" + system.toUri() + "#/0/@systems.0\"/>"), Format.XMI);
		assertRefused(2, "not XMI of this model", document("system=\"#/0/@systems.9\"", ""), Format.XMI);
		Path model = Files.writeString(folder.resolve("model.ecore"), """
				<ecore:EPackage xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
				    xmlns:ecore="http://www.eclipse.org/emf/2002/Ecore" name="p" nsURI="urn:other" nsPrefix="p">
				  <eClassifiers xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:type="ecore:EClass" name="X"/>
				</ecore:EPackage>""");
		assertRefused(0, "not XMI", """
				<p:X xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:p="urn:other"
				 xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="urn:other %s"/>
				""".formatted(model.toUri()), Format.XMI);
	}

	@Test
	void xmiOfAnotherKind() {
		assertRefused(1, "not XML", "plan First", Format.XMI);
		assertRefused(2, "not XMI of this model", document("colour=\"red\"", ""), Format.XMI);
		assertRefused(2, "not XMI of this model", document("tolerance=\"1e999999999\"", ""), Format.XMI);
		assertRefused(1, "no plan:Document", """
				<keys:KeySystem xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:keys="urn:padwright:keysystem"/>
				""", Format.XMI);
	}

	private static final String EMPTY = document("", "");

	private static String document(String attributes, String parts) {
		return """
				<plan:Document xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:plan="urn:padwright:plan">
				<plans name="P" %s>%s</plans></plan:Document>
				""".formatted(attributes, parts);
	}

	private static ExchangeException refused(String text, Format format) {
		return assertThrows(ExchangeException.class, () -> EXCHANGE.read(text, format));
	}

	private static void assertRefused(int line, String why, String text, Format format) {
		ExchangeException refused = refused(text, format);
		assertTrue(refused.getMessage().contains(why), refused.getMessage());
		assertTrue(line == 0 || refused.line().orElse(0) == line, refused.line() + " " + refused.getMessage());
	}
}
