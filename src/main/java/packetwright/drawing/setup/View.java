package packetwright.drawing.setup;

import java.util.List;

/** One way to look at a set-up; it draws the same whatever the scale. */
interface View {
  /** Draws into an empty scene, at the scene's scale. */
  void draw(Scene scene);

  /** What a reader who cannot see it is told; whole sentences. */
  List<String> alternative();
}
