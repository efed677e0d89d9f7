using System.IO;
using System.Security.Cryptography;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>Saves one file: whole or not at all.</summary>
public static class SavedFile
{
    /// <param name="path">The file; the folder that it lies in is there.</param>
    /// <param name="bytes">What it is to hold.</param>
    /// <param name="replace">Whether a file that is there may go.</param>
    /// <param name="place">Where somebody named it; complaints point there.</param>
    /// <param name="complaints">Where the reason goes if nothing is saved.</param>
    public static bool TrySave(string path, byte[] bytes, bool replace, Place place, ICollection<Complaint> complaints)
    {
        if (Directory.Exists(path)) return Refuse(Wordings.IsAFolder(place, path));
        if (File.Exists(path) && !replace) return Refuse(Wordings.FileIsThere(place, path));
        var beside = $"{path}.{RandomNumberGenerator.GetHexString(8, lowercase: true)}.new";
        try
        {
            File.WriteAllBytes(beside, bytes);
            File.Move(beside, path, replace);
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            TryRemove(beside);
            return Refuse(Wordings.CannotSave(place, path, trouble));
        }

        bool Refuse(Complaint complaint)
        {
            complaints.Add(complaint);
            return false;
        }
    }

    private static void TryRemove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // Why nothing was saved has been told; that a leftover stays adds nothing to it.
        }
    }
}
