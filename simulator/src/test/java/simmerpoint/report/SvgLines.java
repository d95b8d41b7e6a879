package simmerpoint.report;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/** Cutting lines of an SVG file as the JDK's XML reader reads them, m; y runs upwards. */
final class SvgLines {
    private SvgLines() {}

    static Element root(byte[] svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg))
                .getDocumentElement();
    }

    /** Closed lines of the layer with that id, or, where it is empty, of every layer but those of whole sheets. */
    static List<Polygon> cuts(Element svg, String id) {
        List<Polygon> all = new ArrayList<>();
        NodeList groups = svg.getElementsByTagName("g");
        for (int k = 0; k < groups.getLength(); k++) {
            Element group = (Element) groups.item(k);
            String name = group.getAttribute("id");
            if (id.isEmpty() ? !name.endsWith("-sheets") : name.equals(id)) {
                NodeList paths = group.getElementsByTagName("path");
                for (int l = 0; l < paths.getLength(); l++) {
                    all.add(polygon(((Element) paths.item(l)).getAttribute("d")));
                }
            }
        }
        return all;
    }

    private static Polygon polygon(String path) {
        List<Point> points = new ArrayList<>();
        for (String each : path.substring(1, path.length() - 1).split("L")) {
            String[] xy = each.split(" ");
            points.add(new Point(Double.parseDouble(xy[0]) / 1000, -Double.parseDouble(xy[1]) / 1000));
        }
        return new Polygon(points);
    }
}
