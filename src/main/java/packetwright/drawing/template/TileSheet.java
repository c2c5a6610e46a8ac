package packetwright.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.template.FullSize.Path;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;

/** The pages of one template: its share of the lines, marks to join by, a bar to measure. */
final class TileSheet {
  static final double WIDTH = 511;
  static final double HEIGHT = 680;

  /** Where a tile's own share of the great sheet begins on its page. */
  static final double LEFT = (WIDTH - Tiling.ACROSS) / 2;

  static final double TOP = 66;

  private static final double SMALL = 9;
  private static final double CROSS = 9;
  private static final double CENTRE = 7;
  private static final double LETTER = 16;
  private static final double PLAN = 34;

  private final Part part;
  private final Projection projection;
  private final Rule rule;
  private final Words words;
  private final FullSize drawing;
  private final Tiling tiling;
  private final List<List<Place>> wood;

  TileSheet(Part part, Projection projection, Rule rule, Words words) {
    this.part = part;
    this.projection = projection;
    this.rule = rule;
    this.words = words;
    FullSize level = new FullSize(part.solid(), projection, false);
    FullSize turned = level.turned();
    Tiling asLevel = Tiling.of(level.width(), level.height());
    Tiling asTurned = Tiling.of(turned.width(), turned.height());
    boolean isTurned = asTurned.count() < asLevel.count();
    this.drawing = isTurned ? turned : level;
    this.tiling = isTurned ? asTurned : asLevel;
    this.wood = drawing.wood();
  }

  Tiling tiling() {
    return tiling;
  }

  FullSize drawing() {
    return drawing;
  }

  /** Line by line, each from the left. */
  List<Sheet> all() {
    List<Sheet> sheets = new ArrayList<>();
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        sheets.add(sheet(column, row));
      }
    }
    return sheets;
  }

  private Sheet sheet(int column, int row) {
    int number = row * tiling.columns() + column + 1;
    List<Mark> marks = new ArrayList<>();
    addTitle(marks, number);
    addPlan(marks, number);
    addBar(marks);
    addLines(marks, column, row);
    if (tiling.count() > 1) {
      addCorners(marks, column, row);
    }
    addDiameters(marks, column, row);
    addLetter(marks, column, row);
    String name =
        String.join(
            "-",
            "template",
            part.name().replace('_', '-'),
            projection.name().toLowerCase(Locale.ROOT),
            String.valueOf(number));
    return new Sheet(name, WIDTH, HEIGHT, describe(number), marks);
  }

  /** Which side of the part is up. */
  private String up() {
    return switch (projection) {
      case FRONT -> words.plain("sheet.template.up", words.plain("sheet.inside_face"));
      case TOP -> words.plain("sheet.template.up", words.plain("sheet.top_edge"));
      case END -> words.plain("sheet.template.up", words.plain("sheet.right_end"));
    };
  }

  private String title(int number) {
    String name = part.name().replace('_', ' ');
    return tiling.count() == 1
        ? words.plain("sheet.template.one", part.letter(), name)
        : words.plain("sheet.template", part.letter(), name, number, tiling.count());
  }

  private String describe(int number) {
    List<String> sentences = new ArrayList<>(List.of(title(number) + ".", up() + "."));
    if (part.isPair()) {
      sentences.add(words.plain("sheet.template.pair"));
    }
    sentences.add(words.plain("sheet.template.check", words.aloud(rule.printExactly(bar()))));
    if (tiling.count() > 1) {
      sentences.add(words.plain("sheet.template.join"));
    }
    return String.join(" ", sentences);
  }

  private void addTitle(List<Mark> marks, int number) {
    marks.add(new Label(0, 12, 12, Inscription.of(Face.BOLD, title(number))));
    String more = part.isPair() ? ". " + words.plain("sheet.template.pair") : "";
    marks.add(new Label(0, 26, SMALL, Inscription.of(Face.REGULAR, up() + more)));
    if (tiling.count() > 1) {
      marks.add(
          new Label(
              0, 38, SMALL, Inscription.of(Face.REGULAR, words.plain("sheet.template.join"))));
    }
  }

  /** The tiles as they lie, this one grey. */
  private void addPlan(List<Mark> marks, int number) {
    double cell = Math.min(14, Math.min(PLAN / tiling.rows(), 130.0 / tiling.columns()));
    double left = WIDTH - 1 - cell * tiling.columns();
    for (int i = 0; i < tiling.count() && tiling.count() > 1; i++) {
      double x = left + i % tiling.columns() * cell;
      double y = 1 + Math.floorDiv(i, tiling.columns()) * cell;
      Outline box = Outline.rectangle(x, y, x + cell, y + cell);
      if (i + 1 == number) {
        marks.add(new Fill(box, 0.6));
      }
      marks.add(Stroke.of(Line.FINE, box));
    }
  }

  /** Six inches, or 150 mm. */
  private Length bar() {
    return rule.unit() == Unit.MILLIMETRE ? new Length(Rational.of(1500, 254)) : Length.ofInches(6);
  }

  private void addBar(List<Mark> marks) {
    double y = HEIGHT - 24;
    double to = 1 + bar().inches().approximate() * FullSize.INCH;
    marks.add(Stroke.of(Line.FINE, 1, y, to, y));
    marks.add(Stroke.of(Line.FINE, 1, y - 6, 1, y + 6));
    marks.add(Stroke.of(Line.FINE, to, y - 6, to, y + 6));
    marks.add(
        Label.right(
            1,
            y + 15,
            SMALL,
            Inscription.of(
                Face.REGULAR, words.say("sheet.template.check", rule.printExactly(bar())))));
  }

  /** Where a place of the template lies on a page, whether or not it is shown there. */
  private Place onPage(Place place, int column, int row) {
    return new Place(
        LEFT + tiling.left() + place.u() - column * Tiling.ACROSS,
        TOP + tiling.top() + place.v() - row * Tiling.DOWN);
  }

  private static Area shown() {
    return new Area(LEFT, TOP, LEFT + Tiling.ACROSS, TOP + Tiling.DOWN).grown(Tiling.OVERLAP);
  }

  private void addLines(List<Mark> marks, int column, int row) {
    for (Path path : drawing.paths()) {
      List<Place> places = path.places().stream().map(p -> onPage(p, column, row)).toList();
      Clip.to(shown(), places).forEach(run -> marks.add(Stroke.of(path.line(), run)));
    }
    for (FullSize.Centre centre : drawing.centres()) {
      Place at = onPage(centre.at(), column, row);
      if (new Area(at.u(), at.v(), at.u(), at.v()).isWithin(shown().grown(-CENTRE))) {
        addCross(marks, at, CENTRE);
      }
    }
  }

  /** How wide each hole is, by it, where there is room. */
  private void addDiameters(List<Mark> marks, int column, int row) {
    for (FullSize.Centre centre : drawing.centres()) {
      Place at = onPage(centre.at(), column, row);
      Inscription text =
          Inscription.of(Face.REGULAR, "⌀ ")
              .then(Inscription.graded(rule.print(centre.diameter()), words));
      if (new Area(at.u(), at.v(), at.u(), at.v()).isWithin(shown())) {
        double beside = centre.diameter().inches().approximate() * FullSize.INCH / 2 + SMALL;
        Area near = new Area(at.u(), at.v(), at.u(), at.v()).grown(beside + 40);
        Label label =
            Obstacles.of(marks).place(text, SMALL, near, at.u() + beside, at.v() - beside);
        if (label != null && label.area().isWithin(shown())) {
          marks.add(label);
        }
      }
    }
  }

  private static void addCross(List<Mark> marks, Place at, double arm) {
    marks.add(Stroke.of(Line.FINE, at.u() - arm, at.v(), at.u() + arm, at.v()));
    marks.add(Stroke.of(Line.FINE, at.u(), at.v() - arm, at.u(), at.v() + arm));
  }

  private void addCorners(List<Mark> marks, int column, int row) {
    for (int i = 0; i < 4; i++) {
      int across = i % 2;
      int down = i / 2;
      Place at =
          new Place(LEFT + Tiling.ACROSS * (double) across, TOP + Tiling.DOWN * (double) down);
      addCross(marks, at, CROSS);
      Inscription name = Inscription.of(Face.ITALIC, tiling.corner(column + across, row + down));
      Label label =
          Obstacles.of(marks).place(name, SMALL, shown().grown(2), at.u() + 8, at.v() - 8);
      if (label != null) {
        marks.add(label);
      }
    }
  }

  /** On the wood, so that it stays on the template when that is cut out. */
  private void addLetter(List<Mark> marks, int column, int row) {
    Place begin = onPage(new Place(0, 0), column, row);
    Place end = onPage(new Place(drawing.width(), drawing.height()), column, row);
    Area seen = shown();
    Area room =
        new Area(
            Math.max(seen.left(), begin.u()),
            Math.max(seen.top(), begin.v()),
            Math.min(seen.right(), end.u()),
            Math.min(seen.bottom(), end.v()));
    Inscription text =
        Inscription.of(Face.BOLD, part.letter() + " ").then(Inscription.of(Face.REGULAR, up()));
    Obstacles obstacles = Obstacles.of(marks);
    double x = (room.left() + room.right()) / 2;
    double y = (room.top() + room.bottom()) / 2;
    Obstacles.Wish wish = new Obstacles.Wish(x, y, label -> isOnWood(label.area(), column, row));
    for (double size = LETTER; size >= SMALL; size -= 7) {
      Label label = obstacles.place(text, size, room, wish);
      if (label != null) {
        marks.add(label);
        return;
      }
    }
  }

  private boolean isOnWood(Area area, int column, int row) {
    double x = (area.left() + area.right()) / 2;
    double y = (area.top() + area.bottom()) / 2;
    // Even and odd: a ray to the right crosses the rings an odd number of times.
    boolean isInside = false;
    for (List<Place> ring : wood) {
      for (int i = 0; i < ring.size(); i++) {
        Place from = onPage(ring.get(i), column, row);
        Place to = onPage(ring.get((i + 1) % ring.size()), column, row);
        if (from.v() > y != to.v() > y
            && x < from.u() + (to.u() - from.u()) * (y - from.v()) / (to.v() - from.v())) {
          isInside = !isInside;
        }
      }
    }
    return isInside;
  }
}
