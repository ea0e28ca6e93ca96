@echo off
rem Starts Wickbench: wickbench [--home DIR] [COMMAND ...]. WICKBENCH_JAVA names another java, WICKBENCH_OPTS adds flags for it.
setlocal
set "here=%~dp0.."
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
rem an edition may bring a java of its own, which fits it
if exist "%here%\runtime\bin\java.exe" set "java=%here%\runtime\bin\java.exe"
if defined WICKBENCH_JAVA set "java=%WICKBENCH_JAVA%"
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true %WICKBENCH_OPTS% -cp "%here%\lib\*" wickbench.launcher.Main %*
exit /b %ERRORLEVEL%
