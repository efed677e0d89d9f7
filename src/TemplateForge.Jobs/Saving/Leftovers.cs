using System.IO;

namespace TemplateForge.Jobs;

/// <summary>What a run that was killed left beside a place.</summary>
internal static class Leftovers
{
    /// <summary>Puts an old folder back into its place where the place is empty, and clears the rest.</summary>
    /// <remarks>Only while no other run has its turn, so whatever lies here belongs to nobody.</remarks>
    public static void PutRight(SpotOnDisk spot)
    {
        foreach (var old in spot.AllBeside(SpotOnDisk.Old))
        {
            if (Directory.Exists(spot.Path)) Directory.Delete(old, recursive: true);
            else Directory.Move(old, spot.Path);
        }
        foreach (var halfBuilt in spot.AllBeside(SpotOnDisk.New)) Directory.Delete(halfBuilt, recursive: true);
    }
}
