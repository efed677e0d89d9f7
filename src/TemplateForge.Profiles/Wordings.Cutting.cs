using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in what a piece asks of its cutting.</summary>
internal static partial class Wordings
{
    public static Complaint PaperIsNotCutOnAMachine(Place place) =>
        place.Complain("A piece of paper is not cut on a machine.", "Say cutting of the piece that is cut from metal.");

    public static Complaint TabFarFromTheEdge(Place place, Point at, double away, double most) =>
        place.Complain(
            $"The tab at {Mm(at.X)} along, {Mm(at.Y)} up is {Mm(away)} from the edge of the piece.",
            $"Put it on the edge, or at most {Mm(most)} off it.");
}
