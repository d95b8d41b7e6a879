/**
 * The one layer of drawing: shapes and text in styles that say what they mean, on a {@link simmerpoint.drawing.Canvas} that pictures, pages,
 * paper and the window offer alike. Knows results, answers' words and figures; knows no file, no page and no window.
 *
 * <p>Charts are in {@link simmerpoint.drawing.chart}, maps of flux in {@link simmerpoint.drawing.map}, the cooker to scale in {@link
 * simmerpoint.drawing.cooker}.
 *
 * <h2>How to write a chart</h2>
 *
 * <ol>
 *   <li>Write a class in {@link simmerpoint.drawing.chart} (or beside it) that implements {@link simmerpoint.drawing.Drawing}: its
 *       constructor takes results and units, {@code height} says how high it wants to be at a width, {@code draw} fills a box. {@code
 *       chart.MoveChart} is the model.
 *   <li>Lengths are units: usual letters are 12 units high everywhere. A page is 360 units wide, a picture 1000 (1.4 pixels each), the
 *       window as wide as it is in pixels. Lay out by the box's width, never by the backend; a narrow box gets fewer marks and smaller
 *       margins, not another class.
 *   <li>Draw with {@code canvas.draw(style, shape)}, {@code canvas.line}, {@code canvas.write(Text.at(x, y, words).end().within(room))}.
 *       A style says what a thing means ({@link simmerpoint.drawing.Style}, {@link simmerpoint.drawing.TextStyle}); colours are in {@link
 *       simmerpoint.drawing.Ink} alone, once for light, dark and print, and the page's style sheet is made from them. A new meaning is one
 *       line in each.
 *   <li>Axes, round marks and curves are in {@code chart.Plot}, {@code chart.Scale} and {@code chart.Ticks}. How wide text gets tells
 *       {@code canvas.metrics()}. Text that could touch something gets a room, or is moved away.
 *   <li>What only a mouse needs (a handle, what is pointed at) comes as a value of its own, as {@code chart.LivePan}; hit tests ask the
 *       chart where its scale lies.
 *   <li>Charts that stand together are stacked ({@link simmerpoint.drawing.Stack}); a picture file is a {@link simmerpoint.drawing.Sheet}
 *       with a title and captions. {@code output.PngFile}, {@code output.SvgCanvas} and the window's {@code FxCanvas} draw any of them.
 * </ol>
 */
package simmerpoint.drawing;
