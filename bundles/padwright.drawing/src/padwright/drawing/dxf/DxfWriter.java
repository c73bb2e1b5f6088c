package padwright.drawing.dxf;

import java.util.Set;

import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Transform;

/**
 * Writes a scene as a DXF file of release 12 in ASCII, which drawing programs of all ages read: one unit is one
 * millimetre, y goes up from the lower edge. Sections and group codes follow the published DXF reference of that
 * release. The same scene gives the same text on every machine.
 */
public final class DxfWriter {

	private static final String VERSION = "AC1009";
	/** White on dark ground, black on light. */
	private static final int COLOUR = 7;
	private static final double DASH = 1;
	private static final double DASH_GAP = 0.7;

	private DxfWriter() {
	}

	/** The whole file; its layers are the named groups of the scene. */
	public static String write(Scene scene) {
		DxfEntities entities = new DxfEntities(new Transform(1, 0, 0, -1, 0, scene.height()));
		scene.elements().forEach(element -> element.accept(entities));
		DxfText file = new DxfText();
		file.string(999, scene.title() + " - lengths in millimetres");
		header(file, scene);
		tables(file, entities.layers());
		return file + new DxfText().group(0, "SECTION").group(2, "ENTITIES").toString() + entities
				+ new DxfText().group(0, "ENDSEC").group(0, "EOF");
	}

	private static void header(DxfText file, Scene scene) {
		file.group(0, "SECTION").group(2, "HEADER");
		file.group(9, "$ACADVER").group(1, VERSION);
		file.group(9, "$INSBASE").point(10, 0, 0);
		file.group(9, "$EXTMIN").point(10, 0, 0);
		file.group(9, "$EXTMAX").point(10, scene.width(), scene.height());
		file.group(0, "ENDSEC");
	}

	private static void tables(DxfText file, Set<String> layers) {
		file.group(0, "SECTION").group(2, "TABLES");
		file.group(0, "TABLE").group(2, "LTYPE").group(70, 2);
		lineType(file, DxfEntities.CONTINUOUS, "Solid line").group(73, 0).group(40, 0.0);
		lineType(file, DxfEntities.DASHED, "Dashed line").group(73, 2).group(40, DASH + DASH_GAP).group(49, DASH)
				.group(49, -DASH_GAP);
		file.group(0, "ENDTAB");
		file.group(0, "TABLE").group(2, "LAYER").group(70, layers.size());
		layers.forEach(layer -> file.group(0, "LAYER").group(2, layer).group(70, 0).group(62, COLOUR)
				.group(6, DxfEntities.CONTINUOUS));
		file.group(0, "ENDTAB").group(0, "ENDSEC");
	}

	/** Begins a line type; 65 is the letter A, the only alignment there is. */
	private static DxfText lineType(DxfText file, String name, String description) {
		return file.group(0, "LTYPE").group(2, name).group(70, 0).group(3, description).group(72, 65);
	}
}
