using Staging.Core.Plans;

namespace Staging.Core.Native;

/// <summary>The border that no exception crosses: what is thrown behind it becomes a status and a text.</summary>
internal static unsafe class Border
{
    /// <summary>Runs the body of a call.</summary>
    /// <param name="error">Takes the text of what went wrong, NULL where nothing did; may be NULL itself.</param>
    /// <param name="body">What is called.</param>
    /// <returns>The status.</returns>
    public static int Cross(byte** error, Action body)
    {
        if (error is not null)
            *error = null;
        try
        {
            body();
            return (int)Status.Ok;
        }
#pragma warning disable CA1031 // Whatever it is, it must not pass into a program that knows no exceptions.
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            Status status = Of(thrown);
            Tell(error, Words(status, thrown));
            return (int)status;
        }
    }

    private static Status Of(Exception thrown) => thrown switch
    {
        OperationCanceledException => Status.Stopped,
        PlanFormatException => Status.BadPlan,
        InvalidModelException => Status.BadModel,
        ArgumentException => Status.BadArgument,
        BadHandleException => Status.BadHandle,
        OutOfMemoryException => Status.NoMemory,
        _ => Status.Fault,
    };

    /// <summary>The message; that of an argument without what the runtime adds, since it names it already.</summary>
    private static string Words(Status status, Exception thrown) => status switch
    {
        Status.Fault => $"fault of the library: {thrown.GetType().Name}: {thrown.Message}",
        Status.BadArgument => thrown.Message.Split(" (Parameter '")[0],
        _ => thrown.Message,
    };

    private static void Tell(byte** error, string text)
    {
        if (error is null)
            return;
        try
        {
            *error = NativeText.Give(text);
        }
        catch (OutOfMemoryException)
        {
            *error = null; // the status alone tells
        }
    }
}
