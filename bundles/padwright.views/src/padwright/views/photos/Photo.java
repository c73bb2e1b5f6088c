package padwright.views.photos;

import java.util.Optional;

import padwright.drawing.scene.PictureData;

/**
 * A photograph that a plan names.
 *
 * @param id tells it from all others
 * @param path as the plan writes it
 * @param words what it shows, of which key and when; empty for nothing
 * @param small a small picture of it
 * @param trouble why there is none, in words; empty while it is being read or where there is one
 */
public record Photo(String id, String path, String words, Optional<PictureData> small, String trouble) {

	/** With its small picture, once it is read. */
	public Photo with(PictureData picture) {
		return new Photo(id, path, words, Optional.of(picture), "");
	}

	/** Without one, and why. */
	public Photo without(String why) {
		return new Photo(id, path, words, Optional.empty(), why);
	}
}
