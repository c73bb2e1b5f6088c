package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

import com.google.gson.JsonParser;

/** Text of a plan is text in what is made of it, whatever it looks like. */
class EscapedOutputTest {

	private static final String HOSTILE = "<script>alert(1)</script>&amp;]]>'\\\"\u0001\u2028";

	@TempDir
	private Path folder;
	private Path plan;

	@BeforeEach
	void writeThePlan() {
		CommandRun.write(folder, "padwright.shop", "");
		CommandRun.write(folder, "s.keys", "system S \"" + HOSTILE + "\" {\n\tkey A \"" + HOSTILE + "\" open hole 14 mm "
				+ "cup 17.5 mm\n}\n");
		CommandRun.write(folder, "t.stock", "stock Stores \"" + HOSTILE + "\" {\n\tmaterial m \"" + HOSTILE
				+ "\" { }\n\tpad P \"" + HOSTILE + "\" { thick 98 thou }\n\tfilm F m { 0.5 1 5 7.5 thou }\n"
				+ "\tfeeler H 0.5 thou\n\tfeeler O 1 thou\n}\n");
		plan = CommandRun.write(folder, "p.plan", "plan P \"" + HOSTILE + "\" for S serial \"" + HOSTILE
				+ "\" with Stores {\n\tplayer \"" + HOSTILE + "\" { }\n\tfit P with F\n\tread at 12 3 6 9\n"
				+ "\tkey A empty 15 15 15 15 felt . . . 0.5 shim 0.5 from 7 to 11 delivered . . . . remark \"" + HOSTILE
				+ "\"\n}\n");
	}

	@Test
	void drawingsAreXmlWithoutForeignElements() throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
		DocumentBuilder parser = factory.newDocumentBuilder();
		for (String name : List.of("card", "film", "handback")) {
			CommandRun run = CommandRun.padwright(name, plan, "-o", folder.resolve("out"));
			assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		}
		int drawings = 0;
		try (Stream<Path> made = Files.walk(folder.resolve("out"))) {
			for (Path svg : made.filter(file -> file.toString().endsWith(".svg")).toList()) {
				Document drawing = parser.parse(svg.toFile());
				assertEquals(0, drawing.getElementsByTagName("script").getLength());
				drawings++;
			}
		}
		assertTrue(drawings >= 2, drawings + " drawings");
	}

	@Test
	void figuresForProgramsAreJson() {
		for (String name : List.of("check", "solve", "leak")) {
			assertTrue(JsonParser.parseString(CommandRun.padwright(name, "--json", plan).out()).isJsonObject(), name);
		}
	}
}
