using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Copies of a shape, one at each station: as it is drawn with the line running to the right.</summary>
internal sealed record AtStationsRecipe(Place Place, ShapeName Shape, StationsName Row, PointTerm HeldAt, bool Turned) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TryStations(Row, out var row) & from.TryPoint(HeldAt, out var held))) return false;
        return from.TryCopies(Place, Shape, [.. row!.Stations.Select(Placed)], out region);

        Placement Placed(Station station)
        {
            var turned = Turned ? Placement.Turned(station.Way.Direction, held) : Placement.Unmoved;
            return turned.Then(Placement.Moved(station.At - held));
        }
    }
}
