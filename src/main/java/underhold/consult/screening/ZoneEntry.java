package underhold.consult.screening;

import java.util.List;
import java.util.function.Supplier;

/**
 * A zone that waits to be screened.
 *
 * @param place where it comes from
 * @param id tells it from every other zone of the same input: a digest of its place and of all that
 *     stands there
 * @param reading reads it; this may take a while
 */
record ZoneEntry(Place place, String id, Supplier<ZoneReading> reading) {
  /** Something that is no zone, and why. */
  static ZoneEntry refused(Place place, String message) {
    return new ZoneEntry(
        place,
        Digest.id(List.of(place.text(), message)),
        () -> new ZoneReading.Refused(List.of(message)));
  }
}
