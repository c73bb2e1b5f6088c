package padwright.paper.page;

import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.PictureData;

/**
 * What stands above the head of a paper for the player: who it is from.
 *
 * @param lines of the shop, the first one its name
 * @param logo beside them
 * @param trouble why a logo that was asked for is not there, in words
 */
public record Letterhead(List<String> lines, Optional<PictureData> logo, Optional<String> trouble) {

	public static final Letterhead NONE = new Letterhead(List.of(), Optional.empty(), Optional.empty());

	public Letterhead {
		lines = List.copyOf(lines);
	}
}
