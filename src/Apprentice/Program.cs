using Apprentice;
using Apprentice.Storage;

try
{
    var (topics, faults) = QuestionBank.Read(QuestionBank.Shipped);
    foreach (var fault in faults) Console.Error.WriteLine(fault);
    return faults.Count > 0 ? 1 : Shell.Run(new ShellOptions(DataFile.Locate(args, Environment.GetEnvironmentVariable), topics, TimeProvider.System, Console.Error));
}
catch (LogException e)
{
    Console.Error.WriteLine(e.Message);
    return 2;
}
