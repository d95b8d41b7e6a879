package simmerpoint.quantities;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import simmerpoint.trial.spot.CardResult;
import simmerpoint.trial.spot.SpotComparison;
import simmerpoint.trial.spot.SpotPhoto;

/** What {@code trial --card} finds: a row for each distance. */
public final class CardQuantities {
    private static final Fields<CardResult.Point> POINT = Fields.<CardResult.Point>none()
            .number(
                    "from_middle_m",
                    "of the card, along the axis",
                    p -> p.reading().distance())
            .number(
                    "measured_width_m",
                    "of the spot at half of its brightness",
                    p -> p.reading().width())
            .number("planned_width_m", "of the traced spot of the dish as meant", CardResult.Point::planned)
            .number("fitted_width_m", "of that of the fitted dish", CardResult.Point::fitted)
            .optionalNumber(
                    "centroid_right_m",
                    "of a photograph's light, from the middle of the picture",
                    p -> photo(p, photo -> photo.profile().x()))
            .optionalNumber(
                    "centroid_up_m",
                    "the same upwards",
                    p -> photo(p, photo -> -photo.profile().y()))
            .optionalNumber(
                    "radius_50_m",
                    "of a photograph, about its centroid",
                    p -> photo(p, photo -> photo.profile().radius50()))
            .optionalNumber(
                    "radius_90_m",
                    "of a photograph",
                    p -> photo(p, photo -> photo.profile().radius90()))
            .optionalNumber(
                    "fitted_radius_50_m",
                    "of the fitted dish, as far as the photograph reaches",
                    p -> maps(p, m -> m.fitted().radius50()))
            .optionalNumber(
                    "fitted_radius_90_m",
                    "the same for 90 %",
                    p -> maps(p, m -> m.fitted().radius90()))
            .optionalNumber(
                    "planned_radius_50_m",
                    "of the dish as meant",
                    p -> maps(p, m -> m.planned().radius50()))
            .optionalNumber(
                    "planned_radius_90_m",
                    "the same for 90 %",
                    p -> maps(p, m -> m.planned().radius90()))
            .optionalNumber(
                    "light_elsewhere_share",
                    "of a photograph's light that lies elsewhere than that of the fitted dish",
                    p -> maps(p, SpotComparison::elsewhere))
            .optionalNumber(
                    "planned_light_elsewhere_share",
                    "the same beside the dish as meant",
                    p -> maps(p, SpotComparison::elsewherePlanned))
            .optionalNumber(
                    "saturated_share", "of the bright half of a photograph", p -> photo(p, SpotPhoto::saturated));

    private static final Fields<CardResult> ALL = Fields.<CardResult>none()
            .estimate(
                    "fitted_slope_error_rad",
                    "standard deviation per axis, with that of the figure",
                    CardResult::slopeError)
            .estimate("fitted_focal_length_m", "with its standard deviation", CardResult::focalLength)
            .number("misfit", "measured less fitted, in standard deviations of a reading", CardResult::misfit)
            .rows("spots", "the nearest to the dish first", CardResult::points, POINT);

    /** JSON and CSV. */
    public static final Document<CardResult> DOCUMENT = new Document<>(
            "card",
            result -> result.scenario().scenario().title(),
            CardResult::seed,
            ALL,
            new Table<>(POINT, result -> result.points().stream()));

    private CardQuantities() {}

    private static OptionalDouble photo(CardResult.Point point, ToDoubleFunction<SpotPhoto> figure) {
        return point.reading().photo().stream().mapToDouble(figure).findFirst();
    }

    private static OptionalDouble maps(CardResult.Point point, ToDoubleFunction<SpotComparison> figure) {
        return point.maps().stream().mapToDouble(figure).findFirst();
    }
}
