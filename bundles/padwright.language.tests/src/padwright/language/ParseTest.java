package padwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.junit.jupiter.api.Test;

import com.google.inject.Injector;

import padwright.model.keysystem.KeySystem;

class ParseTest {

	private final Injector injector = new PadwrightStandaloneSetup().createInjectorAndDoEMFRegistration();

	@Test
	void aSystemIsRead() throws IOException {
		Resource resource = parse("system BoehmC { }");
		assertEquals(List.of(), resource.getErrors());
		assertEquals("BoehmC", assertInstanceOf(KeySystem.class, resource.getContents().get(0)).getName());
	}

	@Test
	void aSlipHasALine() throws IOException {
		assertEquals(2, parse("system BoehmC {\n ? }").getErrors().get(0).getLine());
	}

	private Resource parse(String text) throws IOException {
		Resource resource = injector.getInstance(XtextResourceSet.class).createResource(URI.createURI("test.keys"));
		resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Map.of());
		return resource;
	}
}
